"""A drum with downcomers and heated risers, after K. J. Astrom and R. D. Bell.

Automatica 36 (2000) 363, equations 3 to 27: pressure p, volume of all water V_w, mass share of
steam at the end of the risers a, steam below the surface of the drum V_sd. Written as there, with
e-coefficients; water and steam by IF97. Held from outside: heat, steam, feed.
"""

from math import log, sqrt

from if97 import Saturated
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

GRAVITY = 9.80665
SATURATED = Saturated()
TIMES_S = [1, 2, 5, 10, 20, 30, 60, 100, 150]
# A drum of the size of a 6 MW boiler; names as in the parameter table of the simulator.
DRUM = {
    "drumVolumeM3": 9,
    "drumNormalM3": 4.4,
    "drumSurfaceM2": 7,
    "riserVolumeM3": 0.9,
    "downcomerVolumeM3": 5.1,
    "riserMetalKg": 11_000,
    "drumMetalKg": 6_000,
    "otherMetalKg": 3_000,
    "metalHeatJKgK": 500,
    "downcomerAreaM2": 0.02,
    "circulationFriction": 40,
    "bubbleS": 2,
    "bubbleM3": 0.25,
    "bubbleMomentum": 0.3,
}
FEED_JKG = 440_000
START_PA, START_WATER_M3 = 1.0e6, 10.0
CASES = [
    # what it shows, heat before, change of heat, of steam, of feed (W, kg/s, kg/s)
    ("half a megawatt more fire", 3e6, 0.5e6, 0, 0),
    ("a fifth less fire", 3e6, -0.6e6, 0, 0),
    ("the load takes a fifth more", 3e6, 0, 0.25, 0),
    ("the load falls off by a third", 3e6, 0, -0.4, 0),
    ("twice the feed", 3e6, 0, 0, 1.2),
    ("fire and load rise together", 2e6, 1.5e6, 0.6, 0.6),
]


def riser(p, s, quality):
    """Mean volume share of steam in the risers, and its slopes by quality and pressure."""
    _, w, v, _, _, _, w_p, v_p, _, _ = s

    def share(w, v, a):
        eta = a * (w - v) / v
        return w / (w - v) * (1 - log(1 + eta) / eta)

    small = 1e-6
    by_quality = (share(w, v, quality * (1 + small)) - share(w, v, quality * (1 - small))) / (
        2 * small * quality
    )
    step = 1e-6 * p
    by_pressure = (
        share(w + w_p * step, v + v_p * step, quality)
        - share(w - w_p * step, v - v_p * step, quality)
    ) / (2 * step)
    return share(w, v, quality), by_quality, by_pressure


def circulation(d, s, share):
    _, w, v, *_ = s
    lift = w * (w - v) * GRAVITY * share * d["riserVolumeM3"]
    return sqrt(2 * d["downcomerAreaM2"] * lift / d["circulationFriction"])


def rates(d, state, heat_w, steam_kgs, feed_kgs, feed_jkg):
    p, water, a, bubble = state
    s = SATURATED.at(p)
    _, w, v, hw, hs, t_p, w_p, v_p, hw_p, hs_p = s
    hc = hs - hw
    volume = d["drumVolumeM3"] + d["riserVolumeM3"] + d["downcomerVolumeM3"]
    vr, c, beta = d["riserVolumeM3"], d["metalHeatJKgK"], d["bubbleMomentum"]
    metal = (d["riserMetalKg"] + d["drumMetalKg"] + d["otherMetalKg"]) * c
    rest = volume - water
    av, av_a, av_p = riser(p, s, a)
    down = circulation(d, s, av)
    drum_water = water - d["downcomerVolumeM3"] - (1 - av) * vr

    e11 = w - v
    e12 = water * w_p + rest * v_p
    e21 = w * hw - v * hs
    e22 = (
        water * (hw * w_p + w * hw_p) + rest * (hs * v_p + v * hs_p) - volume + metal * t_p
    )
    e32 = (
        (w * hw_p - a * hc * w_p) * (1 - av) * vr
        + ((1 - a) * hc * v_p + v * hs_p) * av * vr
        + (v + (w - v) * a) * hc * vr * av_p
        - vr
        + d["riserMetalKg"] * c * t_p
    )
    e33 = ((1 - a) * v + a * w) * hc * vr * av_a
    e42 = (
        bubble * v_p
        + (
            v * bubble * hs_p
            + w * drum_water * hw_p
            - bubble
            - drum_water
            + d["drumMetalKg"] * c * t_p
        )
        / hc
        + a * (1 + beta) * vr * (av * v_p + (1 - av) * w_p + (v - w) * av_p)
    )
    e43 = a * (1 + beta) * (v - w) * vr * av_a
    e44 = v

    mass = feed_kgs - steam_kgs
    energy = heat_w + feed_kgs * feed_jkg - steam_kgs * hs
    p_t = (energy * e11 - mass * e21) / (e11 * e22 - e12 * e21)
    water_t = (mass - e12 * p_t) / e11
    a_t = (heat_w - a * hc * down - e32 * p_t) / e33
    bubble_t = (
        v / d["bubbleS"] * (d["bubbleM3"] - bubble)
        + (feed_jkg - hw) / hc * feed_kgs
        - e42 * p_t
        - e43 * a_t
    ) / e44
    return [p_t, water_t, a_t, bubble_t]


def at_rest(d, p, water, heat_w, feed_jkg):
    """The state in which heat, steam and feed keep everything where it is, and that steam."""
    s = SATURATED.at(p)
    _, _, v, hw, hs, *_ = s
    hc = hs - hw
    steam = heat_w / (hs - feed_jkg)
    a = brentq(
        lambda a: heat_w - a * hc * circulation(d, s, riser(p, s, a)[0]), 1e-5, 0.9, xtol=1e-14
    )
    bubble = d["bubbleM3"] - d["bubbleS"] * (hw - feed_jkg) * steam / (v * hc)
    return [p, water, a, bubble], steam


def solve(d, start, heat_w, steam_kgs, feed_kgs, times_s):
    result = solve_ivp(
        lambda _t, y: rates(d, y, heat_w, steam_kgs, feed_kgs, FEED_JKG),
        (0, times_s[-1]),
        start,
        "LSODA",
        times_s,
        rtol=1e-10,
        atol=[1e-3, 1e-10, 1e-12, 1e-10],
    )
    return result.y.T


def table():
    cases = []
    for shows, heat, more_heat, more_steam, more_feed in CASES:
        start, steam = at_rest(DRUM, START_PA, START_WATER_M3, heat, FEED_JKG)
        now = (heat + more_heat, steam + more_steam, steam + more_feed)
        rows = solve(DRUM, start, *now, TIMES_S)
        cases.append(
            {
                "shows": shows,
                "start": state_row(0, start),
                "heatW": now[0],
                "steamKgS": float(now[1]),
                "feedKgS": float(now[2]),
                "rows": [state_row(t, y) for t, y in zip(TIMES_S, rows)],
            }
        )
    return {"drum": DRUM, "feedJKg": FEED_JKG, "cases": cases}


def state_row(t, y):
    p, water, a, bubble = (float(x) for x in y)
    return {
        "atS": t,
        "pressurePa": round(p, 3),
        "waterM3": round(water, 9),
        "riserQuality": float(f"{a:.9g}"),
        "bubbleM3": round(bubble, 9),
    }
