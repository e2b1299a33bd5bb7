package skidway.audit;

import skidway.rules.Rule;

/**
 * A rule that a plan breaks, and where.
 *
 * @param where the stack, bundle, step or place it is about
 * @param value what the plan has, in the rule's SI unit
 * @param limit what is allowed
 * @param sentence the same in the yard's words and the job's figures
 */
public record Finding(Rule rule, String where, double value, double limit, String sentence) {}
