"""Water and steam at saturation by IAPWS-IF97, regions 1, 2 and 4.

Coefficients: if97.json, from IAPWS R7-97(2012), "Revised Release on the IAPWS Industrial
Formulation 1997 for the Thermodynamic Properties of Water and Steam".
"""

import json
from pathlib import Path

import numpy as np
from scipy.interpolate import CubicSpline

_C = json.loads((Path(__file__).parent / "if97.json").read_text())
R = 461.526  # J/(kg K)


def saturation_temperature(pa):
    n = [None, *_C["region4"]["n"]]
    b = (pa / 1e6) ** 0.25
    e = b * b + n[3] * b + n[6]
    f = n[1] * b * b + n[4] * b + n[7]
    g = n[2] * b * b + n[5] * b + n[8]
    d = 2 * g / (-f - np.sqrt(f * f - 4 * e * g))
    return (n[10] + d - np.sqrt((n[10] + d) ** 2 - 4 * (n[9] + n[10] * d))) / 2


def water(pa, kelvin):
    """Density and enthalpy of liquid water."""
    pi, tau = pa / 16.53e6, 1386.0 / kelvin
    terms = list(zip(_C["region1"]["I"], _C["region1"]["J"], _C["region1"]["n"]))
    by_pi = sum(-n * i * (7.1 - pi) ** (i - 1) * (tau - 1.222) ** j for i, j, n in terms if i)
    by_tau = sum(n * (7.1 - pi) ** i * j * (tau - 1.222) ** (j - 1) for i, j, n in terms if j)
    return pa / (R * kelvin * pi * by_pi), R * kelvin * tau * by_tau


def steam(pa, kelvin):
    """Density and enthalpy of steam."""
    pi, tau = pa / 1e6, 540.0 / kelvin
    ideal = zip(_C["region2_ideal"]["J0"], _C["region2_ideal"]["n0"])
    terms = list(zip(_C["region2"]["I"], _C["region2"]["J"], _C["region2"]["n"]))
    by_pi = 1 / pi + sum(n * i * pi ** (i - 1) * (tau - 0.5) ** j for i, j, n in terms)
    by_tau = sum(n * j * tau ** (j - 1) for j, n in ideal if j)
    by_tau = by_tau + sum(n * pi**i * j * (tau - 0.5) ** (j - 1) for i, j, n in terms if j)
    return pa / (R * kelvin * pi * by_pi), R * kelvin * tau * by_tau


class Saturated:
    """Temperature, densities and enthalpies by pressure, with their slopes: one cubic spline,
    fine enough to be within 1e-9 of the formulation."""

    def __init__(self, low_pa=5e4, high_pa=4e6, points=3000):
        pa = np.geomspace(low_pa, high_pa, points)
        kelvin = saturation_temperature(pa)
        water_density, water_enthalpy = water(pa, kelvin)
        steam_density, steam_enthalpy = steam(pa, kelvin)
        table = [kelvin, water_density, steam_density, water_enthalpy, steam_enthalpy]
        self._values = CubicSpline(pa, np.array(table).T)
        self._slopes = self._values.derivative()

    def at(self, pa):
        """T, rho_w, rho_s, h_w, h_s, and the same by pressure."""
        return (*self._values(pa), *self._slopes(pa))
