"""A cylinder steamed, roasted wet and chilled in moving air, and a wrapped slab in steam and air: by lines in space and LSODA in time.

Run: python3 humid-air.py > humid-air.json   (numpy and scipy; some ten seconds)
It shares only the case and the published laws with the engine: another equation for the saturation pressure (Wagner and Pruss, 1993, from memory), the
heat of evaporation as a spline through the steam tables (from memory), cells of equal width, scipy's own integrator with a banded Jacobian, the films
solved by bracketing. Water is summed as two more unknowns.
"""

import json

import numpy as np
from scipy.integrate import solve_ivp
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq

P = 101325.0
SIGMA = 5.670374e-8
kept = {}


def p_sat(C):
    T = C + 273.15
    t = 1 - T / 647.096
    a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502]
    powers = [1, 1.5, 3, 3.5, 4, 7.5]
    return 22.064e6 * np.exp(647.096 / T * sum(x * t**n for x, n in zip(a, powers)))


heat = CubicSpline(
    [0, 20, 40, 60, 70, 80, 90, 100],
    [2500.9e3, 2453.5e3, 2406.0e3, 2357.7e3, 2333.0e3, 2308.0e3, 2282.5e3, 2256.4e3],
)


def settling(face, air, vapour, h):
    """Water that settles on a wet surface [kg/(m² s)]."""
    y = vapour / P
    molar = (1 - y) * 29.1e3 + y * 33.8e3
    return 18.0153 * h / (molar * 0.865 ** (2 / 3)) * np.log((1 - p_sat(face) / P) / (1 - y))


def vapour_heat(face, stage):
    """Heat with the vapour, and the water; what condenses does so on the outside of its own film."""
    air, h, vapour, wet = stage["air"], stage["h"], stage["vapour"], stage["wet"]
    if p_sat(face) >= vapour:
        if not wet:
            return 0.0, 0.0
        n = settling(face, air, vapour, h)
        return n * heat(face), n
    # The dew point bounds the film's outside.
    dew = brentq(lambda C: p_sat(C) - vapour, 0.01, 99.9, xtol=1e-12)
    outside = brentq(
        lambda x: settling(x, air, vapour, h) * heat(x) - stage["film"] * (x - face), face, dew, xtol=1e-12
    )
    n = settling(outside, air, vapour, h)
    return n * heat(outside), n


def face_heat(face, stage):
    q, n = vapour_heat(face, stage)
    walls = stage["air"] + 273.15
    q += stage["h"] * (stage["air"] - face) + 0.9 * SIGMA * (walls**4 - (face + 273.15) ** 4)
    return q, n


def into(T, stage):
    """Heat into the food's own surface, and the water at the face."""
    R = stage.get("resistance", 0.0)
    if R == 0:
        return face_heat(T, stage)
    far = T + R * face_heat(T, stage)[0]
    face = brentq(lambda x: x - T - R * face_heat(x, stage)[0], min(T, far) - 1e-9, max(T, far) + 1e-9, xtol=1e-12)
    return face_heat(face, stage)


def march(name, half, power, meat, start, stages, cells=700):
    """Nodes from the middle to the surface; shells of a slab (power 0) or a cylinder (power 1)."""
    k, c = meat["k"], meat["rho"] * meat["cp"]
    r = np.linspace(0, half, cells + 1)
    middle = (r[:-1] + r[1:]) / 2
    edges = np.concatenate([[0.0], middle, [half]])
    volume = (edges[1:] ** (power + 1) - edges[:-1] ** (power + 1)) / (power + 1)
    conductance = k * middle**power / np.diff(r)
    area = half**power
    # Of the whole body: a metre of cylinder, a square metre of slab with both its faces.
    whole = 2 * np.pi if power == 1 else 2.0
    T = np.full(cells + 1, start)
    clock = 0.0
    for i, stage in enumerate(stages):

        def rate(_, u):
            T = u[2:]
            flow = conductance * np.diff(T)
            q, n = into(T[-1], stage)
            d = np.empty_like(u)
            dT = np.concatenate([[flow[0]], np.diff(flow), [area * q - flow[-1]]]) / (c * volume)
            d[2:] = dT
            d[0] = whole * area * max(0.0, -n)
            d[1] = whole * area * max(0.0, n)
            return d

        # The two sums lean on the surface alone, which is outside the band: their own part of the Jacobian is not needed to be right.
        solution = solve_ivp(
            rate, (0, stage["s"]), np.concatenate([[0.0, 0.0], T]), method="LSODA", rtol=1e-9, atol=1e-9,
            lband=2, uband=2, t_eval=stage["times"] + [stage["s"]],
        )
        for t, u in zip(solution.t, solution.y.T):
            at = clock + t
            kept[f"{name} middle {at:.0f} s"] = float(u[2])
            kept[f"{name} half way {at:.0f} s"] = float(np.interp(half / 2, r, u[2:]))
            kept[f"{name} surface {at:.0f} s"] = float(u[-1])
        kept[f"{name} stage {i} lost"] = float(solution.y[0, -1])
        kept[f"{name} stage {i} settled"] = float(solution.y[1, -1])
        T = solution.y[2:, -1]
        clock += stage["s"]


meat = {"k": 0.48, "rho": 1050.0, "cp": 3500.0}
march(
    "roll", 0.025, 1, meat, 4.0,
    [
        {"air": 85.0, "h": 15.0, "vapour": p_sat(85.0), "film": 5000.0, "wet": True, "s": 1500, "times": [60, 300, 900]},
        {"air": 180.0, "h": 20.0, "vapour": p_sat(30.0), "film": 5000.0, "wet": True, "s": 600, "times": [60, 300]},
        {"air": 3.0, "h": 24.0, "vapour": 0.8 * p_sat(3.0), "film": 5000.0, "wet": True, "s": 3000, "times": [60, 600, 1800]},
    ],
)
march(
    "wrapped", 0.02, 0, meat, 5.0,
    [
        {"air": 80.0, "h": 15.0, "vapour": 0.9 * p_sat(80.0), "film": 5000.0, "wet": False, "resistance": 6e-4, "s": 2400, "times": [60, 600, 1200]},
        {"air": 120.0, "h": 20.0, "vapour": 1500.0, "film": 5000.0, "wet": False, "resistance": 6e-4, "s": 600, "times": [60, 300]},
    ],
)
print(json.dumps(kept, indent=2))
