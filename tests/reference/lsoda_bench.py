"""Solves drum, interspace and purge together with SciPy's LSODA, as accurately as another solver did.

stdin: the case and the other solver's values at its times, JSON. stdout: the other's error against
a tight solution, the loosest rtol at which LSODA's own is no greater, and the seconds that took.
An error is the greatest over all quantities and times, each over the quantity's own range.
"""

import json
import sys
import time

import drum
import numpy as np
from nozzle import ATMOSPHERE_PA, RT, leak_area, mass_flow
from scipy.integrate import solve_ivp

RUNS = 5


def system(case):
    d, held, space, purge = case["drum"], case["held"], case["interspace"], case["purge"]
    up, down = leak_area(space["upstreamLeakDm3H"]), leak_area(space["downstreamLeakDm3H"])
    per_kg = RT / (space["volumeDm3"] / 1000)
    supply = ATMOSPHERE_PA + space["supplyPa"]
    flow = (1 - purge["bypassShare"]) * purge["airM3S"]
    bypass = purge["bypassShare"]

    def rate(_t, y):
        drum_rates = drum.rates(d, y[:4], held["heatW"], held["steamKgS"], 0.0, drum.FEED_JKG)
        p = ATMOSPHERE_PA + y[4]
        net = mass_flow(up, supply, p) - mass_flow(down, p, ATMOSPHERE_PA)
        return [
            *drum_rates,
            per_kg * net,
            -flow / purge["furnaceM3"] * y[5],
            flow / purge["passesM3"] * ((1 - bypass) * y[5] - y[6]),
        ]

    return rate


def main():
    case = json.load(sys.stdin)
    rate, start, times = system(case), case["start"], case["timesS"]

    def solve(rtol):
        # Every quantity as accurate for its own size.
        atol = np.abs(start) * rtol * 1e-2
        found = solve_ivp(rate, (0, times[-1]), start, "LSODA", times, rtol=rtol, atol=atol)
        return found.y.T

    tight = solve(1e-11)
    span = np.ptp(np.vstack([start, tight]), axis=0)

    def error_of(rows):
        return float(np.max(np.abs(np.array(rows) - tight) / span))

    target = error_of(case["found"])
    for exponent in np.arange(2, 11.01, 0.25):
        rtol = 10.0**-exponent
        error = error_of(solve(rtol))
        if error <= target:
            break
    spent = []
    for _ in range(RUNS):
        begin = time.perf_counter()
        solve(rtol)
        spent.append(time.perf_counter() - begin)
    worst = np.max(np.abs(np.array(case["found"]) - tight) / span, axis=0)
    json.dump(
        {
            "ourError": target,
            "errors": [float(x) for x in worst],
            "rtol": rtol,
            "error": error,
            "seconds": sorted(spent)[RUNS // 2],
        },
        sys.stdout,
    )


if __name__ == "__main__":
    main()
