"""Gas through a restriction: isentropic flow of an ideal gas, choked where it must be.

    m = A * p_up * sqrt(2 g / (g - 1) / (R T) * (r^(2/g) - r^((g+1)/g))),  r = p_down / p_up
    choked below r* = (2 / (g + 1))^(g / (g - 1))

A is the effective area (discharge coefficient times opening). Source: any text on gas dynamics,
for instance F. M. White, Fluid Mechanics, chapter 9.
"""

from math import sqrt

MOLAR_GAS_CONSTANT = 8.314462618  # J/(mol K), CODATA
ATMOSPHERE_PA = 101_325.0
TEMPERATURE_K = 288.15
# Methane: molar mass ISO 6976:2016; heat capacity of the ideal gas 35.69 J/(mol K) at 25 C (NIST).
METHANE_KG_MOL = 16.04246e-3
GAMMA = 35.69 / (35.69 - MOLAR_GAS_CONSTANT)
RT = MOLAR_GAS_CONSTANT / METHANE_KG_MOL * TEMPERATURE_K  # pressure times volume of a kilogram


def mass_flow(area_m2, from_pa, to_pa):
    """kg/s between two absolute pressures, backwards negative."""
    if to_pa > from_pa:
        return -mass_flow(area_m2, to_pa, from_pa)
    r = max(to_pa / from_pa, (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1)))
    flow = 2 * GAMMA / (GAMMA - 1) * (r ** (2 / GAMMA) - r ** ((GAMMA + 1) / GAMMA))
    return area_m2 * from_pa * sqrt(max(0.0, flow) / RT)


def leak_area(dm3_per_hour):
    """m2 that pass this leak (gas at 15 C, 101325 Pa) with 100 mbar across to the open air."""
    kg_s = dm3_per_hour / 3.6e6 * ATMOSPHERE_PA / RT
    return kg_s / mass_flow(1.0, ATMOSPHERE_PA + 10_000.0, ATMOSPHERE_PA)
