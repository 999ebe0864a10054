"""Steam, humid air, and what they bring to a surface, from the published equations.

Run: python3 steam.py > steam.json   (numpy and scipy)
Saturation: IAPWS-IF97, region 4. Atmosphere: ISO 2533. Wet bulb: the energy balance of ASHRAE Handbook—Fundamentals.
Air and the film of water: handbook figures, other than the engine's tables where there is a choice.
"""

import json
from math import exp, log, sqrt

from scipy.optimize import brentq

kept = {}
N = [0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7, 0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3]


def p_sat(K):
    v = K + N[9] / (K - N[10])
    A, B, C = v * v + N[1] * v + N[2], N[3] * v * v + N[4] * v + N[5], N[6] * v * v + N[7] * v + N[8]
    return (2 * C / (-B + sqrt(B * B - 4 * A * C))) ** 4 * 1e6


def T_sat(Pa):
    return brentq(lambda K: p_sat(K) - Pa, 273.16, 640, xtol=1e-12)


ps = lambda C: p_sat(C + 273.15)
for K in (300, 500, 600):
    kept[f"p_sat {K} K"] = p_sat(K)
for MPa in (0.1, 1, 10):
    kept[f"T_sat {MPa} MPa"] = T_sat(MPa * 1e6)
isa = lambda m: 101325 * (1 - 2.25577e-5 * m) ** 5.25588
for m in (0, 250, 500, 750, 1000, 1500, 2000, 2500, 3000, 4000):
    kept[f"pressure {m} m"] = isa(m)
    kept[f"boils {m} m"] = T_sat(isa(m)) - 273.15
for C in (5, 20, 50, 60, 65, 70, 72, 75, 80, 90, 100):
    kept[f"p_sat {C} C"] = ps(C)

# Thermodynamic wet bulb: Ws·(2501 − 2.326 t*) − 1.006 (t − t*) = W·(2501 + 1.86 t − 4.186 t*)
ratio = lambda pv: 0.62198 * pv / (101325 - pv)


def wet_bulb(C, pv):
    f = lambda w: (2501 - 2.326 * w) * ratio(ps(w)) - 1.006 * (C - w) - ratio(pv) * (2501 + 1.86 * C - 4.186 * w)
    return brentq(f, 1, min(99.9, C), xtol=1e-10)


for C in (100, 120, 150, 180, 200, 230):
    for pv in (1200, 5000, 12350, 31200, 47400, 70200):
        kept[f"wet bulb {C} C {pv} Pa"] = wet_bulb(C, pv)
for C, rh in ((25, 0.5), (20, 0.5), (60, 0.2), (80, 0.5)):
    kept[f"wet bulb {C} C {rh}"] = wet_bulb(C, rh * ps(C))

# Saturated air on a cold surface: Stefan's flow through the film, Chilton and Colburn. h_fg: 2500.9 − 2.361 t.
LE = 0.865 ** (2 / 3)


def effective(Ta, Ts, h=15, rh=1.0):
    y = rh * ps(Ta) / 101325
    c = (1 - y) * 29.1e3 + y * 33.8e3
    N_ = h / (c * LE) * log((1 - ps(Ts) / 101325) / (1 - y))
    return (h * (Ta - Ts) + N_ * 18.015 * (2500.9 - 2.361 * Ts) * 1e3) / (Ta - Ts)


for Ta in (60, 80, 85, 90, 95, 98):
    for Ts in (10, 30, 50, 70):
        if Ts < Ta - 5 and not (Ta == 60 and Ts == 70):
            kept[f"saturated {Ta} on {Ts}"] = effective(Ta, Ts)
for Ts in (10, 50):
    kept[f"80 at half on {Ts}"] = effective(80, Ts, rh=0.5)

# Pure steam on a lying cylinder; water of the film from a handbook: density, conductivity, viscosity, specific heat
WATER = {60: (983.3, 0.654, 4.67e-4, 4185), 80: (971.8, 0.670, 3.55e-4, 4197), 95: (961.5, 0.677, 2.97e-4, 4212)}
for D, Ts in ((0.04, 20), (0.04, 60), (0.04, 90), (0.02, 60)):
    rho, k, mu, c = WATER[(Ts + 100) // 2]
    latent = 2256.4e3 + 0.68 * c * (100 - Ts)
    kept[f"steam on {D} at {Ts}"] = 0.729 * (9.81 * rho * (rho - 0.598) * latent * k**3 / (mu * D * (100 - Ts))) ** 0.25


# Air by Sutherland's viscosity and conductivity, the gas law, Pr from cp = 1007
def air(C):
    K = C + 273.15
    mu = 1.458e-6 * K**1.5 / (K + 110.4)
    k = 2.64638e-3 * K**1.5 / (K + 245.4 * 10 ** (-12 / K))
    return k, mu / (101325 / 287.05 / K), mu * 1007 / k


def free(D, Ts, Ta):
    k, nu, Pr = air((Ts + Ta) / 2)
    Ra = 9.81 * abs(Ts - Ta) * D**3 * Pr / nu**2 / ((Ts + Ta) / 2 + 273.15)
    return k / D * (0.6 + 0.387 * Ra ** (1 / 6) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2


def blown(D, u, C):
    k, nu, Pr = air(C)
    Re = u * D / nu
    return k / D * (0.3 + 0.62 * sqrt(Re) * Pr ** (1 / 3) / (1 + (0.4 / Pr) ** (2 / 3)) ** 0.25 * (1 + (Re / 282000) ** 0.625) ** 0.8)


for Ts, Ta in ((60, 20), (70, 3), (20, 3), (5, 180)):
    kept[f"still air {Ts} in {Ta}"] = free(0.04, Ts, Ta)
for u in (0.5, 1, 2, 3, 5, 8):
    kept[f"air at {u} m/s"] = blown(0.04, u, 20)
for a, b in ((60, 20), (70, 3), (5, 180), (60, 180)):
    s, w = a + 273.15, b + 273.15
    kept[f"radiation {a} to {b}"] = 0.9 * 5.670374419e-8 * (s**4 - w**4) / (s - w)

# Layers of 10 µm film, and air trapped under it
for k in (0.13, 0.30):
    for n in (3, 5, 10, 20):
        for h in (1000, 300, 100, 20):
            kept[f"{n} layers k {k} h {h}"] = 1 / (1 / h + n * 10e-6 / k)
kept["0.1 mm of air h 1000"] = 1 / (1 / 1000 + 1e-4 / 0.026)

if __name__ == "__main__":
    print(json.dumps(kept, indent=2))
