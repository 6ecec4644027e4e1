package lampwright.engine.match;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.List;

/** An allotment as an integer programme, solved by CBC as OR-Tools has it: code of others. */
final class IntegerProgramme {

  private IntegerProgramme() {}

  /** Returns the least cost; the native library must have been loaded. */
  static double leastCost(AllotmentCase problem) {
    MPSolver solver = MPSolver.createSolver("CBC");
    MPObjective objective = solver.objective();
    objective.setMinimization();
    double unbounded = MPSolver.infinity();
    MPVariable longest = solver.makeNumVar(0, unbounded, "longest wait");
    objective.setCoefficient(longest, problem.pricePerWait());
    MPConstraint[] within = new MPConstraint[problem.supplies().length];
    for (int k = 0; k < within.length; k++) {
      within[k] = solver.makeConstraint(-unbounded, problem.supplies()[k]);
    }
    for (List<Choice> row : problem.rows()) {
      MPConstraint one = solver.makeConstraint(1, 1);
      MPConstraint wait = solver.makeConstraint(-unbounded, 0);
      wait.setCoefficient(longest, -1);
      for (Choice choice : row) {
        MPVariable taken = solver.makeBoolVar("");
        objective.setCoefficient(taken, choice.cost());
        one.setCoefficient(taken, 1);
        wait.setCoefficient(taken, choice.waiting());
        for (int u = 0; u < choice.uses().count(); u++) {
          within[choice.uses().supply(u)].setCoefficient(taken, choice.uses().amount(u));
        }
      }
    }
    MPSolverParameters parameters = new MPSolverParameters();
    parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = solver.solve(parameters);
    if (status != MPSolver.ResultStatus.OPTIMAL) {
      throw new IllegalStateException("Not solved: " + status);
    }
    double least = objective.value();
    solver.delete();
    return least;
  }
}
