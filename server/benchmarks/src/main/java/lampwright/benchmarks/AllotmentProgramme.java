package lampwright.benchmarks;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.List;
import lampwright.engine.match.Choice;

/** The baseline: the problem as an integer programme for CBC, as OR-Tools has it. */
final class AllotmentProgramme {

  private final MPSolver solver = MPSolver.createSolver("CBC");

  AllotmentProgramme(StudioAllotment problem) {
    MPObjective objective = solver.objective();
    objective.setMinimization();
    double unbounded = MPSolver.infinity();
    MPVariable longest = solver.makeNumVar(0, unbounded, "longest wait");
    objective.setCoefficient(longest, problem.pricePerWait);
    MPConstraint[] within = new MPConstraint[problem.supplies.length];
    for (int k = 0; k < within.length; k++) {
      within[k] = solver.makeConstraint(-unbounded, problem.supplies[k]);
    }
    for (List<Choice> row : problem.rows) {
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
  }

  double leastCost() {
    MPSolverParameters parameters = new MPSolverParameters();
    parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    if (solver.solve(parameters) != MPSolver.ResultStatus.OPTIMAL) {
      throw new IllegalStateException("Not solved.");
    }
    return solver.objective().value();
  }

  void delete() {
    solver.delete();
  }
}
