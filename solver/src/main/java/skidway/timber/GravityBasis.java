package skidway.timber;

/**
 * The volume that a specific gravity is told on. The mass is oven-dry in all three; the number of
 * one basis must never be used as that of another (up to 7 % apart).
 */
public enum GravityBasis {
  /** Green volume: basic specific gravity (FPL-GTR-282 ch. 4). */
  GREEN_VOLUME,
  /** Volume at 12 % moisture (FPL-GTR-282 Table 5-3, second rows). */
  AIR_DRY_VOLUME,
  /** Oven-dry volume (NDS Table 12.3.3A). */
  OVEN_DRY_VOLUME
}
