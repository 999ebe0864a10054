"""Freezing and thawing, and heating and chilling above the first ice, by the enthalpy method: equal cells, heat content as the unknown, scipy's LSODA with a banded Jacobian.

Run: python3 freezing.py > freezing.json   (numpy and scipy; about half a minute)

Properties are worked out here from the published equations: Choi and Okos' components, ice by the freezing-point curve of an ideal solution with
0.4 of the protein's mass as bound water, Schwartzberg's apparent heat, Levy's conductivity with ice and unfrozen water as first phase, the solids as second. Mass and size stay as at the start.
"""

import json

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from scipy.special import erf, erfc

K = {
    "protein": (0.17881, 1.1958e-3, -2.7178e-6), "fat": (0.18071, -2.7604e-4, -1.7749e-7),
    "carbohydrate": (0.20141, 1.3874e-3, -4.3312e-6), "ash": (0.32962, 1.4011e-3, -2.9069e-6),
    "water": (0.57109, 1.7625e-3, -6.7036e-6), "ice": (2.2196, -6.2489e-3, 1.0154e-4),
}
RHO = {
    "protein": (1329.9, -0.5184, 0), "fat": (925.59, -0.41757, 0), "carbohydrate": (1599.1, -0.31046, 0),
    "ash": (2423.8, -0.28063, 0), "water": (997.18, 3.1439e-3, -3.7574e-3), "ice": (916.89, -0.13071, 0),
}
CP = {
    "protein": (2.0082, 1.2089e-3, -1.3129e-6), "fat": (1.9842, 1.4733e-3, -4.8008e-6),
    "carbohydrate": (1.5488, 1.9625e-3, -5.9399e-6), "ash": (1.0926, 1.8896e-3, -3.6817e-6),
    "water": (4.1762, -9.0864e-5, 5.4731e-6), "ice": (2.0623, 6.0769e-3, 0),
}
COLD_WATER = (4.0817, -5.3062e-3, 9.9516e-4)
L0 = 333.6e3


def poly(c, T):
    return c[0] + c[1] * T + c[2] * T * T


class Food:
    def __init__(self, tf, start, low, high, **x):
        total = sum(x.values())
        x = {name: value / total for name, value in x.items()}
        free = x["water"] - 0.4 * x["protein"]
        others = [n for n in x if n != "water"]

        def volumes(T, ice):
            parts = {n: x[n] / poly(RHO[n], T) for n in others}
            parts["water"] = (x["water"] - ice) / poly(RHO["water"], T)
            parts["ice"] = ice / poly(RHO["ice"], T)
            return parts

        def density(T, ice=0.0):
            return 1 / sum(volumes(T, ice).values())

        def conductivity(T, ice):
            v = volumes(T, ice)
            first, second = ("ice", "water"), others
            wet = sum(v[n] for n in first)
            dry = sum(v[n] for n in second)
            k1 = sum(v[n] * poly(K[n], T) for n in first) / wet
            k2 = sum(v[n] * poly(K[n], T) for n in second) / dry
            phi = wet / (wet + dry)
            r = k1 / k2
            s = (r - 1) ** 2 / ((r + 1) ** 2 + r / 2)
            b = 2 / s - 1 + 2 * phi
            F = (b - np.sqrt(b * b - 8 * phi / s)) / 2
            return k2 * (2 + r + 2 * (r - 1) * F) / (2 + r - (r - 1) * F)

        below = np.linspace(low, tf, 40001)
        above = np.linspace(tf, high, 20001)
        solid = sum(x[n] * poly(CP[n], below) for n in others)
        solid = 1e3 * (solid + free * poly(CP["ice"], below) + (x["water"] - free) * poly(COLD_WATER, below))
        liquid = 1e3 * sum(x[n] * poly(CP[n], above) for n in others) + 1e3 * x["water"] * np.where(
            above < 0, poly(COLD_WATER, above), poly(CP["water"], above))
        # Mass and size stay: the density is that of the start throughout.
        rho = density(start, free * (1 - tf / start) if start < tf else 0.0)
        steps = lambda T, c: np.concatenate([[0], np.cumsum((c[1:] + c[:-1]) / 2 * np.diff(T))])
        # The ice in closed form: its peak is too sharp for the trapezium rule.
        u_below = rho * (steps(below, solid) - L0 * free * ((1 - tf / below) - (1 - tf / low)))
        u_above = u_below[-1] + rho * steps(above, liquid)
        self.T = np.concatenate([below, above[1:]])
        self.u = np.concatenate([u_below, u_above[1:]])
        ice = free * (1 - tf / below)
        self.k = np.concatenate([conductivity(below, ice), conductivity(above, 0.0)[1:]])
        self.at = lambda T: np.interp(T, self.T, self.u)


def march(food, shape, half, h, start, medium, times, until, cells):
    """Centre and surface temperatures at the times, and when the centre reaches `until`."""
    power = {"slab": 0, "cylinder": 1, "sphere": 2}[shape]
    dx = half / cells
    faces = np.linspace(0, half, cells + 1)
    area = faces**power
    volume = (faces[1:] ** (power + 1) - faces[:-1] ** (power + 1)) / (power + 1)

    def rates(t, u):
        T = np.interp(u, food.u, food.T)
        k = np.interp(T, food.T, food.k)
        q = area[1:-1] * (T[1:] - T[:-1]) / (dx / 2 / k[1:] + dx / 2 / k[:-1])
        out = area[-1] * (medium - T[-1]) / (1 / h + dx / 2 / k[-1])
        return np.concatenate([q, [out]]) / volume - np.concatenate([[0], q]) / volume

    def arrived(t, u):
        return np.interp(u[0], food.u, food.T) - until

    arrived.terminal = True
    run = solve_ivp(rates, [0, 3 * 86400], np.full(cells, food.at(start)), method="LSODA", lband=1, uband=1,
                    rtol=1e-7, atol=10.0, dense_output=True, events=arrived, max_step=300)
    C = [float(np.interp(run.sol(t)[0], food.u, food.T)) for t in times]
    return C, float(run.t_events[0][0])


kept = {}
lamb = dict(water=0.7342, protein=0.2029, fat=0.0525, ash=0.0106)
forcemeat = dict(water=0.66, protein=0.15, fat=0.16, carbohydrate=0.015, ash=0.015)
cases = {
    "slab-freeze": (lamb, -1.9, "slab", 0.02, 30, 5, -35, -18, [1800, 3600, 5400]),
    "cylinder-freeze": (lamb, -1.9, "cylinder", 0.02, 30, 5, -35, -18, [900, 1800, 2700]),
    "sphere-freeze": (lamb, -1.9, "sphere", 0.02, 30, 5, -35, -18, [600, 1200, 1800]),
    "forcemeat-freeze": (forcemeat, -2.0, "cylinder", 0.028, 25, 3, -30, -18, [1800, 3600, 5400]),
    "cylinder-thaw": (lamb, -1.9, "cylinder", 0.02, 10, -18, 5, 0, [3600, 14400, 25200]),
    "cylinder-cook": (lamb, -1.9, "cylinder", 0.02, 1000, -18, 100, 70, [300, 600, 900]),
    "forcemeat-steam": (forcemeat, -2.0, "cylinder", 0.028, 1000, 4, 100, 70, [600, 900, 1200, 1500]),
    "forcemeat-bath": (forcemeat, -2.0, "slab", 0.02, 300, 6, 82, 75, [600, 1200, 1800]),
    "forcemeat-chill": (forcemeat, -2.0, "cylinder", 0.028, 500, 75, 1, 8, [600, 1200, 1800, 2400]),
}
for name, (food, tf, shape, half, h, start, medium, until, times) in cases.items():
    low, high = min(start, medium, tf) - 1, max(start, medium) + 1
    made = Food(tf, start, low, high, **food)
    kept[f"{name} heat"] = (made.at(until) - made.at(start)) / 1e6
    # Cells of half the size twice: what is left of the error in space goes as the square.
    runs = [march(made, shape, half, h, start, medium, times, until, n) for n in (80, 160)]
    kept[f"{name} time"] = runs[1][1] + (runs[1][1] - runs[0][1]) / 3
    kept[f"{name} cells"] = abs(runs[1][1] - runs[0][1])
    for t, coarse, fine in zip(times, runs[0][0], runs[1][0]):
        kept[f"{name} {t}"] = fine + (fine - coarse) / 3



# --- A sharp front in half a space (Neumann): everything known in closed form but one root ----------------------------
def neumann(name, ks, kl, cs, cl, rho, latent, freezing, start, wall, t):
    a_s, a_l = ks / rho / cs, kl / rho / cl
    n = np.sqrt(a_s / a_l)

    def lacking(x):
        liquid = (kl / ks) * n * (freezing - start) / (freezing - wall) * np.exp(-((x * n) ** 2)) / erfc(x * n)
        return np.exp(-x * x) / erf(x) + liquid - x * np.sqrt(np.pi) * latent / (cs * abs(freezing - wall))

    x = brentq(lacking, 1e-4, 3, xtol=1e-14)
    kept[f"{name} front"] = 2e3 * x * np.sqrt(a_s * t)
    kept[f"{name} heat"] = 2e-6 * ks * abs(freezing - wall) * np.sqrt(t) / (erf(x) * np.sqrt(np.pi * a_s))


neumann("at the first ice", 1.5, 0.5, 2000, 3600, 1050, 210e3, -1, -1, -30, 3600)
neumann("from 10 C", 1.5, 0.5, 2000, 3600, 1050, 210e3, -1, 10, -30, 3600)
neumann("thawing", 0.5, 1.5, 3600, 2000, 1050, 210e3, -1, -20, 20, 3600)

print(json.dumps(kept, indent=1))
