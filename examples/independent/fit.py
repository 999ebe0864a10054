"""Surface coefficient, diffusivity and size from noisy logs, fitted apart from the engine: exact series, scipy's solver, profile likelihood.

Run: python3 fit.py > fit.json   (numpy and scipy; about ten seconds)
"""

import json

import numpy as np
from scipy.optimize import brentq, least_squares
from scipy.special import j0, j1
from scipy.stats import t as student

kept = {}
k0, rho, cp, R0 = 0.48, 1050.0, 3500.0, 0.025


def roots(shape, Bi, n=60):
    found = []
    for i in range(n):
        if shape == "slab":
            f, a, b = lambda z: z * np.sin(z) - Bi * np.cos(z), i * np.pi, i * np.pi + np.pi / 2
        elif shape == "sphere":
            f, a, b = lambda z: np.sin(z) * (1 - Bi) - z * np.cos(z), i * np.pi, (i + 1) * np.pi
        else:
            f = lambda z: z * j1(z) - Bi * j0(z)
            a = 0.0 if i == 0 else brentq(j1, (i + 0.2) * np.pi, (i + 0.3) * np.pi)
            b = brentq(j0, (i + 0.7) * np.pi, (i + 0.8) * np.pi)
        found.append(brentq(f, a + 1e-12, b - 1e-12, xtol=1e-14))
    return np.array(found)


def theta(shape, Bi, Fo, x):
    z = roots(shape, Bi)
    if shape == "slab":
        c, m = 4 * np.sin(z) / (2 * z + np.sin(2 * z)), np.cos(z * x)
    elif shape == "sphere":
        c, m = 4 * (np.sin(z) - z * np.cos(z)) / (2 * z - np.sin(2 * z)), np.sinc(z * x / np.pi)
    else:
        c, m = 2 * j1(z) / (z * (j0(z) ** 2 + j1(z) ** 2)), j0(z * x)
    return (c * m * np.exp(-np.outer(Fo, z**2))).sum(axis=1)


def model(shape, x, p, names, seconds):
    v = {"h": 500.0, "k": 1.0, "R": R0}
    v.update({n: np.exp(q) for n, q in zip(names, p)})
    k, R = k0 * v["k"], v["R"]
    return 95 - 90 * theta(shape, v["h"] * R / k, k / rho / cp * seconds / R**2, x * R0 / R)


def case(name, shape, x, truth, names, sd, seed, n=60, minutes=60):
    seconds = np.arange(1, n + 1) * minutes * 60 / n
    p = np.log([truth[q] for q in names])
    C = np.round(model(shape, x, p, names, seconds) + sd * np.random.RandomState(seed).standard_normal(n), 2)
    for i, c in enumerate(C):
        kept[f"{name} C {i}"] = float(c)
    left = lambda q: C - model(shape, x, q, names, seconds)
    start = np.log([{"h": 500.0, "k": 1.0, "R": R0}[q] for q in names])
    fit = least_squares(left, start, xtol=1e-12, ftol=1e-12, gtol=1e-12)
    e = fit.fun
    S = (e**2).sum()
    r = max(0.0, (e[1:] * e[:-1]).sum() / S)
    widen = (1 + r) / (1 - r)
    variance = S / (n - len(p)) * widen + n * 0.005**2
    allowed = student.ppf(0.975, n / widen - len(p)) ** 2 * variance
    sds = np.sqrt(np.diag(np.linalg.inv(fit.jac.T @ fit.jac)) * variance)

    def excess(j, held):
        if len(p) == 1:
            return (left(np.array([held])) ** 2).sum() - S - allowed
        rest = lambda q: left(np.insert(q, j, held))
        return 2 * least_squares(rest, np.delete(fit.x, j), xtol=1e-12, ftol=1e-12).cost - S - allowed

    for j, q in enumerate(names):
        kept[f"{name} {q}"] = float(np.exp(fit.x[j]))
        for side, sign in (("low", -1), ("high", 1)):
            end = brentq(lambda v: excess(j, v), fit.x[j], fit.x[j] + sign * 4 * sds[j] * student.ppf(0.975, n), xtol=1e-9)
            kept[f"{name} {q} {side}"] = float(np.exp(end))


case("cylinder, middle", "cylinder", 0.0, {"h": 150.0, "k": 1.1}, ["h", "k"], 0.2, 3)
case("slab, off the middle", "slab", 0.6, {"h": 220.0}, ["h"], 0.3, 5)
case("sphere, half way", "sphere", 0.5, {"h": 90.0, "R": 0.023}, ["h", "R"], 0.25, 7)
case("cylinder, h so high that it hardly matters", "cylinder", 0.0, {"h": 1500.0}, ["h"], 0.3, 9)

print(json.dumps(kept, indent=1))
