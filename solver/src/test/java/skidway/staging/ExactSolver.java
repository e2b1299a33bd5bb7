package skidway.staging;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;

/** The general exact solver: runs on a model that has the first staging as a hint. */
final class ExactSolver {
  private final int workers;

  ExactSolver(int workers) {
    this.workers = workers;
    Loader.loadNativeLibraries();
  }

  /**
   * Looks for the cheapest staging of a model.
   *
   * @param solver which has the values afterwards
   * @param processorS seconds of processor time it may take, all its threads together
   * @return whether it found any
   */
  boolean solve(CpModel model, CpSolver solver, long seed, double processorS) {
    solver.getParameters().setNumWorkers(workers).setRandomSeed((int) seed);
    solver.getParameters().setMaxTimeInSeconds(20 * processorS);
    Runnable off = ProcessorTime.stopAfter(processorS, solver::stopSearch);
    CpSolverStatus status = solver.solve(model);
    off.run();
    if (status == CpSolverStatus.UNKNOWN) {
      return false;
    }
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      throw new IllegalStateException("The first staging is not allowed by the model: " + status);
    }
    return true;
  }
}
