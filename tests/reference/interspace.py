"""The space between two shut valves whose seats leak.

    dp/dt = R T / (M V) * (m_up(p_supply, p) - m_down(p, atmosphere))

Isothermal; each seat is the orifice that passes its stated leak at 100 mbar.
"""

from nozzle import ATMOSPHERE_PA, RT, leak_area, mass_flow
from scipy.integrate import solve_ivp

TIMES_S = [1, 2, 5, 10, 20, 30]
CASES = [
    # what it shows, volume, supply, start (gauge), leak of the upstream and of the downstream seat
    ("a leak of the downstream seat empties it", 12, 10_000, 10_000, 0, 700),
    ("a small volume empties fast", 2, 10_000, 10_000, 0, 200),
    ("a leak of the upstream seat fills it", 12, 10_000, 0, 900, 0),
    ("both seats fill it to their common pressure", 3, 10_000, 0, 1500, 1000),
    ("both seats empty it to their common pressure", 3, 10_000, 10_000, 1500, 1000),
    ("high pressure, the downstream seat choked", 6, 200_000, 200_000, 0, 500),
]


def solve(volume_dm3, supply_pa, start_pa, up_dm3_h, down_dm3_h, times_s):
    area_up, area_down = leak_area(up_dm3_h), leak_area(down_dm3_h)
    per_kg = RT / (volume_dm3 / 1000)

    def rate(_t, y):
        p = ATMOSPHERE_PA + y[0]
        inward = mass_flow(area_up, ATMOSPHERE_PA + supply_pa, p)
        return [per_kg * (inward - mass_flow(area_down, p, ATMOSPHERE_PA))]

    result = solve_ivp(
        rate, (0, times_s[-1]), [start_pa], "LSODA", times_s, rtol=1e-11, atol=1e-7, max_step=0.1
    )
    return [float(p) for p in result.y[0]]


def table():
    return [
        {
            "shows": shows,
            "volumeDm3": volume,
            "supplyPa": supply,
            "startPa": start,
            "upstreamLeakDm3H": up,
            "downstreamLeakDm3H": down,
            "rows": [
                {"atS": t, "gaugePa": round(p, 4)}
                for t, p in zip(TIMES_S, solve(volume, supply, start, up, down, TIMES_S))
            ],
        }
        for shows, volume, supply, start, up, down in CASES
    ]
