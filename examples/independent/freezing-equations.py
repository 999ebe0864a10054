"""Ice, heat and time of freezing by the published equations.

Run: python3 freezing-equations.py > freezing-equations.json
Equations as given in ASHRAE Handbook—Refrigeration, its foods as remembered; typed in apart from the engine.
"""

import json
from math import log

from properties import K, RHO, at

kept = {}
L0 = 333.6
FOODS = {
    "beef": (0.5821, 0.1748, 0.2255, 0.0082, -1.7),
    "pork": (0.7263, 0.1955, 0.0714, 0.0102, -2.2),
    "chicken": (0.6599, 0.1860, 0.1506, 0.0079, -2.8),
}


def miles(food, T):
    w, p, _, _, tf = FOODS[food]
    return (w - 0.4 * p) * (1 - tf / T)


def tchigeov(w, tf, T):
    return 1.105 * w / (1 + 0.7138 / log(tf - T + 1))


def heat(food, T):
    w, p, _, _, tf = FOODS[food]
    s, free = 1 - w, (w - 0.4 * p) * L0
    frozen = lambda t: (t + 40) * (1.55 + 1.26 * s - free * tf / (-40 * t))
    return frozen(T) if T <= tf else frozen(tf) + (T - tf) * (4.19 - 2.30 * s - 0.628 * s**3)


def apparent(food, T):
    w, p, _, _, tf = FOODS[food]
    return 1.55 + 1.26 * (1 - w) - (w - 0.4 * p) * L0 * tf / T**2


kept["beef ice -20 tchigeov"] = tchigeov(0.58, -1.7, -20)
for T in (-20, -1.7, 10):
    kept[f"beef heat {T}"] = heat("beef", T)
kept["beef 150 kg 10 to -20"] = 150 * (heat("beef", 10) - heat("beef", -20))
for T in (-5, -20):
    kept[f"chicken ice {T}"] = miles("chicken", T)
    kept[f"chicken apparent {T}"] = apparent("chicken", T)
for T in (-20, -2.8, 20):
    kept[f"chicken heat {T}"] = heat("chicken", T)

w, p, f, a, tf = FOODS["pork"]
ice = tchigeov(w, tf, -40)
x = {"ice": ice, "water": w - ice, "protein": p, "fat": f, "ash": a}
volume = {n: v / at(RHO[n], -40) for n, v in x.items()}
total = sum(volume.values())
kept["pork ice -40"] = ice
kept["pork density -40"] = 1 / total
kept["pork parallel -40"] = sum(volume[n] / total * at(K[n], -40) for n in x)
kept["pork perpendicular -40"] = 1 / sum(volume[n] / total / at(K[n], -40) for n in x)

# Plank: a sphere (P 1/6, R 1/24 of its diameter)
d, h, k, rho, L, t_f, t_a = 0.07, 50, 1.2, 1000, 250e3, -1.25, -40
kept["plank sphere"] = rho * L / (t_f - t_a) * (d / 6 / h + d * d / 24 / k)

# Pham 1986: a cylinder
d, E, h, k = 0.02, 2, 30, 1.4
t_c, t_a, t_i = -18, -35, 5
t_fm = 1.8 + 0.263 * t_c + 0.105 * t_a
H1 = 1050 * 3500 * (t_i - t_fm)
H2 = 980 * (220e3 + 2000 * (t_fm - t_c))
kept["pham mean freezing"] = t_fm
kept["pham cylinder"] = d / (E * h) * (H1 / ((t_i + t_fm) / 2 - t_a) + H2 / (t_fm - t_a)) * (1 + h * d / k / 2)

if __name__ == "__main__":
    print(json.dumps(kept, indent=2))
