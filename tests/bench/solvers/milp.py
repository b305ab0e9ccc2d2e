"""Solves a program of mip.py by HiGHS, as scipy brings it: milp.py SECONDS, the program as JSON on standard input, the
answer as JSON on standard output. A process of its own, so that it can be ended. Ends with 77 where there is no scipy."""

import json
import sys
import time

try:
    import numpy
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import coo_matrix
except ImportError as missing:
    print(missing, file=sys.stderr)
    sys.exit(77)


def main():
    if sys.argv[1:] == ["--is-there"]:
        return
    program = json.load(sys.stdin)
    row, column, factor = [], [], []
    for at, (terms, _, _) in enumerate(program["rows"]):
        for variable, value in terms.items():
            row.append(at)
            column.append(int(variable))
            factor.append(value)
    rows = coo_matrix((factor, (row, column)), shape=(len(program["rows"]), len(program["cost"]))).tocsc()
    low = [-numpy.inf if low is None else low for _, low, _ in program["rows"]]
    high = [numpy.inf if high is None else high for _, _, high in program["rows"]]
    begin = time.process_time()
    answer = milp(
        program["cost"],
        constraints=LinearConstraint(rows, low, high),
        bounds=Bounds(program["low"], program["high"]),
        integrality=numpy.array(program["whole"], int),
        options={"time_limit": float(sys.argv[1]), "mip_rel_gap": 0},
    )
    json.dump(
        {
            "seconds": time.process_time() - begin,
            "proven": answer.status == 0,
            "values": None if answer.x is None else list(answer.x),
            "cost": None if answer.x is None else float(answer.fun),
            "lower": None if answer.mip_dual_bound is None else float(answer.mip_dual_bound),
        },
        sys.stdout,
    )


main()
