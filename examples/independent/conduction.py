"""Conduction in simple, layered and staged bodies from its exact series, with scipy's Bessel functions and root finder.

Run: python3 conduction.py > conduction.json   (numpy and scipy; about two seconds)
"""

import json

import numpy as np
from scipy.optimize import brentq
from scipy.special import erfc, erfcx, j0, j1, y0, y1

kept = {}


def keep(name, value):
    kept[name] = float(value)


# --- One body in one medium -------------------------------------------------------------------------------------------
def roots(shape, Bi, n):
    if shape == "slab":
        f = lambda z: z * np.sin(z) - Bi * np.cos(z)
        gaps = [(k * np.pi, k * np.pi + np.pi / 2) for k in range(n)]
    elif shape == "cylinder":
        f = lambda z: z * j1(z) - Bi * j0(z)
        zeros = [0.0] + [brentq(j1, (k + 0.2) * np.pi, (k + 0.3) * np.pi, xtol=1e-15) for k in range(1, n)]
        tops = [brentq(j0, (k + 0.7) * np.pi, (k + 0.8) * np.pi, xtol=1e-15) for k in range(n)]
        gaps = list(zip(zeros, tops))
    else:
        f = lambda z: np.sin(z) - z * np.cos(z) - Bi * np.sin(z)
        gaps = [(k * np.pi + 1e-12, (k + 1) * np.pi - 1e-12) for k in range(n)]
    return np.array([brentq(f, a + 1e-13, b, xtol=1e-15, rtol=1e-15) for a, b in gaps])


def weights(shape, z):
    if shape == "slab":
        return 4 * np.sin(z) / (2 * z + np.sin(2 * z))
    if shape == "cylinder":
        return 2 * j1(z) / (z * (j0(z) ** 2 + j1(z) ** 2))
    return 4 * (np.sin(z) - z * np.cos(z)) / (2 * z - np.sin(2 * z))


def mode(shape, z, x):
    if shape == "slab":
        return np.cos(z * x)
    if shape == "cylinder":
        return j0(z * x)
    return np.sinc(z * x / np.pi)


def mean_mode(shape, z):
    if shape == "slab":
        return np.sin(z) / z
    if shape == "cylinder":
        return 2 * j1(z) / z
    return 3 * (np.sin(z) - z * np.cos(z)) / z**3


cache = {}


def theta(shape, Bi, Fo, x):
    z = cache.setdefault((shape, Bi), roots(shape, Bi, 120))
    m = mean_mode(shape, z) if x == "mean" else mode(shape, z, x)
    return float(np.sum(weights(shape, z) * m * np.exp(-(z**2) * Fo)))


BIOTS = [0.01, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100]
for shape in ("slab", "cylinder", "sphere"):
    for Bi in BIOTS:
        z = roots(shape, Bi, 1)
        keep(f"{shape} Bi {Bi} root", z[0])
        keep(f"{shape} Bi {Bi} coefficient", weights(shape, z)[0])
for Bi in (1, 10):
    for n, z in enumerate(roots("cylinder", Bi, 6)):
        keep(f"cylinder Bi {Bi} root {n + 1}", z)
for Bi, Fo in [(0.1, 0.2), (0.5, 0.2), (1, 0.1), (1, 0.2), (1, 0.5), (1, 1), (5, 0.1), (5, 0.2), (5, 0.5), (10, 0.1), (10, 0.2), (10, 0.5), (100, 0.2)]:
    for name, x in (("centre", 0), ("half", 0.5), ("surface", 1), ("mean", "mean")):
        keep(f"cylinder Bi {Bi} Fo {Fo} {name}", theta("cylinder", Bi, Fo, x))
for shape, Bi, Fo in [("slab", 1, 0.5), ("slab", 10, 0.5), ("sphere", 1, 0.5), ("sphere", 10, 0.2)]:
    for name, x in (("centre", 0), ("surface", 1)):
        keep(f"{shape} Bi {Bi} Fo {Fo} {name}", theta(shape, Bi, Fo, x))

z0 = np.array([brentq(j0, (k + 0.7) * np.pi, (k + 0.8) * np.pi, xtol=1e-15) for k in range(120)])
for Fo in (0.05, 0.1, 0.2, 0.3, 0.5, 1):
    keep(f"cylinder Bi inf Fo {Fo} centre", np.sum(2 / (z0 * j1(z0)) * np.exp(-(z0**2) * Fo)))

# --- A cylinder and a sphere of food, 5 °C into 100 °C ----------------------------------------------------------------
K, RHO, CP = 0.48, 1050, 3500
ALPHA = K / RHO / CP


def heated(shape, R, h, t, x, medium=100, start=5):
    return medium + (start - medium) * theta(shape, h * R / K, ALPHA * t / R**2, x)


R, H = 0.02, 0.06
for h, times in ((100, (600, 1200, 1800)), (300, (600, 1200, 1800)), (1000, (300, 600, 900, 1200)), (5000, (600, 900))):
    for t in times:
        keep(f"cylinder h {h} {t} s centre", heated("cylinder", R, h, t, 0))
        keep(f"cylinder h {h} {t} s surface", heated("cylinder", R, h, t, 1))
        both = theta("cylinder", h * R / K, ALPHA * t / R**2, 0) * theta("slab", h * H / K, ALPHA * t / H**2, 0)
        keep(f"finite cylinder h {h} {t} s centre", 100 - 95 * both)
for t in (300, 600):
    for name, x in (("centre", 0), ("half", 0.5), ("surface", 1)):
        keep(f"sphere {t} s {name}", heated("sphere", R, 1000, t, x))
for D in (20, 30, 40, 50, 60, 80):
    for medium, h in ((75, 500), (85, 500), (100, 1000), (100, 5000)):
        for end in (65, 70, 72):
            f = lambda t: heated("cylinder", D / 2000, h, t, 0, medium) - end
            keep(f"{D} mm in {medium} °C h {h} to {end}", brentq(f, 20, 20000, xtol=1e-9))

# --- Problems of textbooks --------------------------------------------------------------------------------------------
def until(shape, half, h, k, alpha, start, medium, end, x=0):
    f = lambda t: medium + (start - medium) * theta(shape, h * half / k, alpha * t / half**2, x) - end
    return brentq(f, 10, 1e5, xtol=1e-9)


def one_term(shape, half, h, k, alpha, start, medium, end):
    z = roots(shape, h * half / k, 1)
    return float(np.log(weights(shape, z)[0] * (start - medium) / (end - medium)) / z[0] ** 2 * half**2 / alpha)


egg = ("sphere", 0.025, 1200, 0.627, 0.151e-6, 5, 95, 70)
keep("egg of 50 mm", until(*egg))
keep("egg of 50 mm one term", one_term(*egg))
egg = ("sphere", 0.0275, 1400, 0.6, 0.14e-6, 8, 97, 70)
keep("egg of 55 mm one term", one_term(*egg))
keep("egg of 55 mm", until(*egg))
keep("apple", until("sphere", 0.03, 50, 0.355, 0.355 / 820 / 3600, 15, 2, 3))
z = roots("slab", 9 * 0.01 / 0.45, 1)
left = weights("slab", z)[0] * np.cos(z[0])
keep("steaks one term", np.log(left * 36 / 13) / z[0] ** 2 * 1e-4 / 0.91e-7)
keep("steaks", until("slab", 0.01, 9, 0.45, 0.91e-7, 25, -11, 2, 1))
ham_alpha = 0.379 / 1080 / 3740
ham = lambda t: np.prod([theta("slab", 48 * a / 0.379, ham_alpha * t / a**2, 0) for a in (0.051, 0.0825, 0.1395)])
keep("ham", brentq(lambda t: -1 + 71 * ham(t) - 10, 1000, 1e5, xtol=1e-9))

# --- Near a surface, before the heat has crossed the piece --------------------------------------------------------------
h, k, alpha = 400, 0.45, 1.3e-7
for t in (5, 10, 20, 30):
    for mm in (0, 1, 2, 3):
        x = mm / 1000
        eta, s = x / (2 * np.sqrt(alpha * t)), h * np.sqrt(alpha * t) / k
        rise = erfc(eta) - np.exp(-(eta**2)) * erfcx(eta + s)
        keep(f"oil {mm} mm {t} s", 5 + 175 * rise)

# --- f and j of the general method ------------------------------------------------------------------------------------
long, flat = 2.404825557695773, np.pi / 2
keep("f of a cylinder", np.log(10) / long**2)
keep("f of a slab", np.log(10) / flat**2)
keep("f of a sphere", np.log(10) / np.pi**2)
f_cyl, f_slab = np.log(10) / long**2 * R**2 / ALPHA, np.log(10) / flat**2 * H**2 / ALPHA
keep("f of a short cylinder", 1 / (1 / f_cyl + 1 / f_slab))
keep("j of a short cylinder", 2 / (long * j1(long)) * 4 / np.pi)

# --- A filling in its skin --------------------------------------------------------------------------------------------
A, B = 0.015, 0.0175
inner, outer = (0.48, 1020 * 3470), (0.36, 1000 * 3190)
gx, gw = np.polynomial.legendre.leggauss(240)


def layered(h, times, radii):
    m1, m2 = np.sqrt(inner[1] / inner[0]), np.sqrt(outer[1] / outer[0])

    def shape_of(lam):
        p, q = lam * m1, lam * m2
        value, flow = j0(p * A), -inner[0] * p * j1(p * A)
        # a·J0 + b·Y0 in the skin with the same temperature and the same flow where they meet
        a, b = np.linalg.solve([[j0(q * A), y0(q * A)], [-outer[0] * q * j1(q * A), -outer[0] * q * y1(q * A)]], [value, flow])
        return p, q, a, b

    def at_surface(lam):
        _, q, a, b = shape_of(lam)
        return -outer[0] * q * (a * j1(q * B) + b * y1(q * B)) + h * (a * j0(q * B) + b * y0(q * B))

    grid = np.linspace(0.003, 4, 20000)
    values = [at_surface(g) for g in grid]
    lams = [brentq(at_surface, grid[i], grid[i + 1], xtol=1e-15) for i in range(len(grid) - 1) if values[i] * values[i + 1] < 0]
    r1, w1 = A * (gx + 1) / 2, gw * A / 2
    r2, w2 = A + (B - A) * (gx + 1) / 2, gw * (B - A) / 2
    out = {(t, r): 100.0 for t in times for r in radii}
    mean = {t: 100.0 for t in times}
    held = {t: 100.0 for t in times}
    capacity = (inner[1] * A**2 + outer[1] * (B**2 - A**2)) / 2
    for lam in lams:
        p, q, a, b = shape_of(lam)
        f1, f2 = j0(p * r1), a * j0(q * r2) + b * y0(q * r2)
        first = inner[1] * np.sum(f1 * r1 * w1) + outer[1] * np.sum(f2 * r2 * w2)
        square = inner[1] * np.sum(f1**2 * r1 * w1) + outer[1] * np.sum(f2**2 * r2 * w2)
        for t in times:
            c = -95 * first / square * np.exp(-(lam**2) * t)
            mean[t] += c * (np.sum(f1 * r1 * w1) + np.sum(f2 * r2 * w2)) / (B**2 / 2)  # by volume
            held[t] += c * first / capacity  # by what they hold of heat
            for r in radii:
                out[t, r] += c * (j0(p * r) if r <= A else a * j0(q * r) + b * y0(q * r))
    return lams, out, mean, held


for h, times in ((1000, (60, 120, 300, 600, 900)), (100, (300, 600, 1200))):
    lams, out, mean, held = layered(h, times, (0, 0.01, A, B))
    for n in range(3):
        keep(f"layered h {h} lambda {n + 1}", lams[n])
    for t in times:
        keep(f"layered h {h} {t} s mean", mean[t])
        keep(f"layered h {h} {t} s mean of the heat", held[t])
        for name, r in (("middle", 0), ("10 mm", 0.01), ("under the skin", A), ("surface", B)):
            keep(f"layered h {h} {t} s {name}", out[t, r])

# --- Steam, air, ice --------------------------------------------------------------------------------------------------
stages = [(900, 100, 1000), (120, 20, 10), (1200, 0, 300)]
N = 400


def staged(times):
    found = {}
    modes, amounts, medium, began = None, None, None, 0
    for s, C, h in stages:
        z = roots("cylinder", h * R / K, N)
        norm = (j0(z) ** 2 + j1(z) ** 2) / 2
        start = -C if modes is None else medium - C
        c = (5 if modes is None else 0) * j1(z) / z + start * j1(z) / z
        if modes is not None:
            top = modes[:, None] * j1(modes)[:, None] * j0(z) - z * j0(modes)[:, None] * j1(z)
            under = modes[:, None] ** 2 - z**2
            same = abs(under) < 1e-9
            cross = np.where(same, (j0(z) ** 2 + j1(z) ** 2) / 2, top / np.where(same, 1, under))
            c = c + amounts @ cross
        c = c / norm
        for t in times:
            if began < t <= began + s:
                e = c * np.exp(-(z**2) * ALPHA * (t - began) / R**2)
                found[t] = {"centre": C + e.sum(), "half": C + e @ j0(z / 2), "surface": C + e @ j0(z), "mean": C + e @ (2 * j1(z) / z)}
        modes, amounts, medium = z, c * np.exp(-(z**2) * ALPHA * s / R**2), C
        began += s
    return found


for t, places in staged((300, 600, 900, 960, 1020, 1420, 1820, 2220)).items():
    for name, C in places.items():
        keep(f"staged {t} s {name}", C)

print(json.dumps(kept, indent=2, ensure_ascii=False))
