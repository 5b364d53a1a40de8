"""Air that sweeps gas out of a furnace and the passes behind it: two stirred tanks in series.

    V1 dc1/dt = (1 - b) q (c_in - c1)             out1 = b c_in + (1 - b) c1
    V2 dc2/dt = (1 - b) q (out1 - c2)

c is the share of fuel by volume, b the share of what enters a tank that leaves it unmixed.
Constant pressure and temperature, so volumes are conserved. The flow rises evenly to its rated
value, as behind a fan that runs up; a seep of gas may go on all the while.
"""

from scipy.integrate import solve_ivp

TIMES_S = [5, 10, 20, 40, 60, 90, 120]
CASES = [
    # what it shows, furnace, passes, bypass, m3/s of air, run-up, m3/s of gas, share at the start
    ("both full of a rich mixture", 20, 8, 0.05, 2.0, 0, 0, 0.095),
    ("a fan that runs up", 20, 8, 0.05, 2.0, 15, 0, 0.095),
    ("a short circuit of a fifth", 6, 3, 0.2, 1.2, 4, 0, 0.06),
    ("no short circuit", 6, 3, 0.0, 1.2, 0, 0, 0.06),
    ("gas that goes on seeping in", 20, 8, 0.05, 2.0, 10, 4e-4, 0.05),
]


def solve(v1, v2, bypass, air_m3_s, run_up_s, gas_m3_s, start, times_s):
    def rate(t, y):
        air = air_m3_s * (min(1.0, t / run_up_s) if run_up_s > 0 else 1.0)
        q = air + gas_m3_s
        c_in = gas_m3_s / q if q > 0 else 0.0
        between = bypass * c_in + (1 - bypass) * y[0]
        return [
            (1 - bypass) * q / v1 * (c_in - y[0]),
            (1 - bypass) * q / v2 * (between - y[1]),
        ]

    result = solve_ivp(
        rate,
        (0, times_s[-1]),
        [start, start],
        "LSODA",
        times_s,
        rtol=1e-11,
        atol=1e-15,
        max_step=0.5,
    )
    return [[float(c) for c in tank] for tank in result.y]


def table():
    rows = []
    for shows, v1, v2, bypass, air, run_up, gas, start in CASES:
        furnace, passes = solve(v1, v2, bypass, air, run_up, gas, start, TIMES_S)
        rows.append(
            {
                "shows": shows,
                "furnaceM3": v1,
                "passesM3": v2,
                "bypassShare": bypass,
                "airM3S": air,
                "runUpS": run_up,
                "gasM3S": gas,
                "startShare": start,
                "rows": [
                    {"atS": t, "furnaceShare": float(f"{a:.8g}"), "passShare": float(f"{b:.8g}")}
                    for t, a, b in zip(TIMES_S, furnace, passes)
                ],
            }
        )
    return rows
