"""Salt: uptake by the series, balances, water activity by Pitzer's equation, nitrite.

Run: python3 salt.py > salt.json   (numpy and scipy)
Series as in Crank, The Mathematics of Diffusion; sodium chloride after Pitzer & Mayorga 1973.
"""

import json

import numpy as np
from scipy.optimize import brentq
from scipy.special import j0, j1, jn_zeros

kept = {}
N = 1200
odd = np.arange(1, 2 * N, 2) * np.pi / 2
zeros = jn_zeros(0, N)
whole = np.arange(1, N + 1) * np.pi


def endless(shape, Fo):
    q, w = {"slab": (odd, 2 / odd**2), "cylinder": (zeros, 4 / zeros**2), "sphere": (whole, 6 / whole**2)}[shape]
    return 1 - float(np.sum(w * np.exp(-(q**2) * Fo)))


def middle(shape, Fo):
    if shape == "slab":
        c, q = 2 * np.where(np.arange(N) % 2 == 0, 1, -1) / odd, odd
    elif shape == "cylinder":
        c, q = 2 / (zeros * j1(zeros)), zeros
    else:
        c, q = 2 * np.where(np.arange(N) % 2 == 0, 1, -1), whole
    return 1 - float(np.sum(c * np.exp(-(q**2) * Fo)))


def limited(shape, a, Fo, n=400):
    if shape == "slab":  # tan q = −a q
        f, gaps = lambda q: np.sin(q) + a * q * np.cos(q), [((k + 0.5) * np.pi, (k + 1) * np.pi) for k in range(n)]
        w = lambda q: 2 * a * (1 + a) / (1 + a + a * a * q * q)
    elif shape == "cylinder":  # a q J0 + 2 J1 = 0
        z0, z1 = jn_zeros(0, n), jn_zeros(1, n)
        f, gaps = lambda q: a * q * j0(q) + 2 * j1(q), list(zip(z0, z1))
        w = lambda q: 4 * a * (1 + a) / (4 + 4 * a + a * a * q * q)
    else:  # tan q = 3q/(3 + a q²)
        f, gaps = lambda q: (3 + a * q * q) * np.sin(q) - 3 * q * np.cos(q), [(k * np.pi, (k + 1) * np.pi) for k in range(1, n)]
        w = lambda q: 6 * a * (1 + a) / (9 + 9 * a + a * a * q * q)
    q = np.array([brentq(f, lo + 1e-12, hi - 1e-12, xtol=1e-14) for lo, hi in gaps if f(lo + 1e-12) * f(hi - 1e-12) < 0])
    return 1 - float(np.sum(w(q) * np.exp(-(q**2) * Fo)))


for shape in ("slab", "cylinder", "sphere"):
    for Fo in (0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.1728, 0.2, 0.3, 0.5, 1, 2):
        kept[f"{shape} endless {Fo}"] = endless(shape, Fo)
        if Fo >= 0.01:
            kept[f"{shape} middle {Fo}"] = middle(shape, Fo)
    for a in (1, 5):
        for Fo in (0.01, 0.05, 0.1, 0.1728, 0.2, 0.5, 1):
            kept[f"{shape} limited {a} {Fo}"] = limited(shape, a, Fo)
kept["cylinder limited 1 0.001"] = limited("cylinder", 1, 0.001, 1200)
kept["slab limited 1 0.001"] = limited("slab", 1, 0.001, 1200)
kept["sphere limited 1 0.001"] = limited("sphere", 1, 0.001, 1200)

for brine, pct in ((1, 6), (2, 6), (2, 8), (0.5, 10), (3, 3.5)):
    S, W = brine * pct / 100, 0.7576 + brine * (1 - pct / 100)
    C = S / (S + W)
    kept[f"balance {brine} {pct} water-phase"] = 100 * C
    kept[f"balance {brine} {pct} grams"] = 1000 * C / (1 - C) * 0.7576


def phi(m):
    return 1 - 0.3915 * m**0.5 / (1 + 1.2 * m**0.5) + m * (0.0765 + 0.2664 * np.exp(-2 * m**0.5)) + m * m * 0.00127


def activity(m):
    return float(np.exp(-2 * m * phi(m) * 0.0180153))


for m in (0.1, 0.5, 1, 2, 3, 4, 5, 6):
    kept[f"a_w {m} mol"] = activity(m)
    kept[f"phi {m} mol"] = float(phi(m))
for w in (0.5, 0.9, 1, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 12, 15, 18, 20, 24, 26.4):
    kept[f"a_w {w} %"] = activity(w / (100 - w) / 0.0584428)
for a in (0.98, 0.97, 0.96, 0.95, 0.94, 0.93, 0.92, 0.91, 0.9, 0.86):
    kept[f"salt for a_w {a}"] = brentq(lambda w: activity(w / (100 - w) / 0.0584428) - a, 0.1, 26.4, xtol=1e-12)

NO2 = 46.0055 / 68.9953
kept["ion of 150"] = 150 * NO2
kept["salt of 80"] = 80 / NO2
kept["salt of 55"] = 55 / NO2
kept["ion of 156.25"] = 156.25 * NO2
kept["ion of 120"] = 120 * NO2

# The salometer at 60 °F: a cubic through the printed densities and a quartic through the printed first ices, where the engine goes straight between rows.
rows = np.array([
    [1, 1005.3, .22], [2, 1012.2, .24], [4, 1026.8, .28], [6, 1041.3, .31], [8, 1055.9, .34], [10, 1070.7, .37], [12, 1085.7, .39],
    [14, 1100.9, .42], [16, 1116.2, .44], [18, 1131.9, .47], [20, 1147.8, .49], [22, 1164.0, .51], [24, 1180.4, .53], [26, 1197.2, .55],
])
ice = np.array([
    [0, 0], [1, -.58], [2, -1.13], [3, -1.72], [4, -2.35], [5, -2.97], [6, -3.63], [7, -4.32], [8, -5.03], [9, -5.77], [15, -10.88], [16, -11.9],
    [17, -12.93], [18, -14.03], [19, -15.21], [20, -16.46], [21, -17.78], [22, -19.19], [23, -20.69], [23.3, -21.1],
])
rho20, slope = np.polyfit(rows[:, 0], rows[:, 1], 3), np.polyfit(rows[:, 0], rows[:, 2], 2)
first = np.polyfit(ice[:, 0], ice[:, 1], 4)
for S in (5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 95, 100):
    w = 26.395 * S / 100
    rho = float(np.polyval(rho20, w) + 4.44 * np.polyval(slope, w))
    kept[f"salometer {S} salt"] = w
    kept[f"salometer {S} gravity"] = rho / 999.0
    kept[f"salometer {S} baume"] = 145 - 145 / (rho / 999.0)
    kept[f"salometer {S} litre"] = rho * w / 100
    kept[f"salometer {S} water"] = 1000 * w / (100 - w)
    if w < 23.3:
        kept[f"salometer {S} ice"] = float(np.polyval(first, w))

print(json.dumps(kept, indent=2))
