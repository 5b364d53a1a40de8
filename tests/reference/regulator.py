"""A spring-loaded pressure regulator that feeds a pipe with a cock at its end.

    tau ds1/dt = p - s1,   tau ds2/dt = s1 - s2       what the diaphragm feels, gauge pressures
    aim = (setpoint - s2) / droop, held between -lock-up / droop and 1
    |dy/dt| <= 1 / stroke time; within that y is at its aim
    area = A * seat(y): in proportion to y above +w, nothing below -w, a parabola between,
           w = lock-up / droop; plus the leak of the seat
    V / (R T) dp/dt = m(supply, p) - m_cock(p) + rho Vd dy/dt

rho is the density at the setpoint. A stroke that is at its aim is written as one that closes on it
with a time constant of 0.1 ms, which changes nothing that a table shows.

These equations are stable only where 2 (C + rho Vd / droop) > tau * g, with C = V / (R T) and
g = (flow per stroke) / droop; the cases keep to that, since past it the swing would be all there is.
"""

from nozzle import ATMOSPHERE_PA, RT, leak_area, mass_flow
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

CATCH_UP_PER_S = 1e4
# A small train with a slow regulator, whose every move takes several steps of any simulator.
SLOW = {
    "regulator": {
        "areaM2": 2e-4,
        "setpointPa": 10_000,
        "droopPa": 1500,
        "lockUpPa": 400,
        "lagS": 0.05,
        "strokeS": 0.5,
        "diaphragmVolumeDm3": 0.5,
        "seatLeakDm3H": 0.1,
    },
    "volumeDm3": 100,
    "cockM2": 1.2e-4,
    "ratedKgS": 0.02,
}
# A large train with a quick one.
QUICK = {
    "regulator": {
        "areaM2": 1.55e-3,
        "setpointPa": 10_000,
        "droopPa": 770,
        "lockUpPa": 200,
        "lagS": 0.003,
        "strokeS": 0.06,
        "diaphragmVolumeDm3": 0.5,
        "seatLeakDm3H": 0.1,
    },
    "volumeDm3": 15,
    "cockM2": 1e-3,
    "ratedKgS": 0.12,
}
TIMES_S = [0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 5]
MOVES = [
    # what it shows, train, supply, change of it, opening of the cock before, after, time to move it
    ("its pressure falls as the load comes", SLOW, 20_000, {}, 0.4, 0.9, 0.5),
    ("its pressure comes back as the load goes", SLOW, 20_000, {}, 0.9, 0.3, 0.5),
    ("a stroke too slow for its load", SLOW, 20_000, {"strokeS": 4.0}, 0.9, 0.2, 0.5),
    ("lock-up behind a valve that shuts", SLOW, 20_000, {}, 0.8, 0.0, 0.5),
    ("creep past a dirty seat", SLOW, 20_000, {"seatLeakDm3H": 2000}, 0.5, 0.0, 0.5),
    ("a supply below its setpoint", SLOW, 9_000, {}, 0.4, 0.9, 0.5),
    ("lock-up of a large train", QUICK, 20_000, {}, 0.8, 0.0, 2.0),
]
LOADS = [0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 1.0]


def seat(y, w):
    if y <= -w:
        return 0.0
    return y if y >= w else (y + w) ** 2 / (4 * w)


def aim_of(r, sensed_pa):
    return min(1.0, max(-r["lockUpPa"] / r["droopPa"], (r["setpointPa"] - sensed_pa) / r["droopPa"]))


def inward(r, supply_pa, y, p):
    area = leak_area(r["seatLeakDm3H"]) + r["areaM2"] * seat(y, r["lockUpPa"] / r["droopPa"])
    return mass_flow(area, ATMOSPHERE_PA + supply_pa, ATMOSPHERE_PA + p)


def outward(area_m2, p):
    return mass_flow(area_m2, ATMOSPHERE_PA + p, ATMOSPHERE_PA)


def rest(r, supply_pa, cock_m2):
    """The pressure at which as much comes in as goes out."""
    return brentq(
        lambda p: inward(r, supply_pa, aim_of(r, p), p) - outward(cock_m2, p),
        0.0,
        supply_pa,
        xtol=1e-9,
    )


def solve(train, r, supply_pa, before, after, move_s, times_s):
    displaced_kg = (ATMOSPHERE_PA + r["setpointPa"]) / RT * r["diaphragmVolumeDm3"] / 1000
    content = train["volumeDm3"] / 1000 / RT
    fastest = 1 / r["strokeS"]

    def rate(t, state):
        p, s1, s2, y = state
        opening = before + (after - before) * min(1.0, t / move_s)
        dy = max(-fastest, min(fastest, CATCH_UP_PER_S * (aim_of(r, s2) - y)))
        net = inward(r, supply_pa, y, p) - outward(train["cockM2"] * opening, p)
        return [
            (net + displaced_kg * dy) / content,
            (p - s1) / r["lagS"],
            (s1 - s2) / r["lagS"],
            dy,
        ]

    first = rest(r, supply_pa, train["cockM2"] * before)
    moved = solve_ivp(
        rate,
        (0, times_s[-1]),
        [first, first, first, aim_of(r, first)],
        "LSODA",
        times_s,
        rtol=1e-9,
        atol=1e-7,
        max_step=0.005,
    )
    return first, [float(p) for p in moved.y[0]]


def moves():
    for shows, train, supply, change, before, after, move in MOVES:
        r = {**train["regulator"], **change}
        first, pressures = solve(train, r, supply, before, after, move, TIMES_S)
        yield {
            "shows": shows,
            "supplyPa": supply,
            **{k: train[k] for k in ("volumeDm3", "cockM2", "ratedKgS")},
            "regulator": r,
            "openingBefore": before,
            "openingAfter": after,
            "moveS": move,
            "restPa": round(first, 3),
            "rows": [{"atS": t, "gaugePa": round(p, 3)} for t, p in zip(TIMES_S, pressures)],
        }


def table():
    r = QUICK["regulator"]
    droop = [
        {"opening": load, "gaugePa": round(rest(r, 20_000, QUICK["cockM2"] * load), 3)}
        for load in LOADS
    ]
    return {"droop": {"supplyPa": 20_000, **QUICK, "rows": droop}, "moves": list(moves())}
