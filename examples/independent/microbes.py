"""Death and growth of organisms: integrals by quadrature, growth by a library's own solver of the differential equations.

Run: python3 microbes.py > microbes.json   (numpy and scipy)
Lethal rates after Bigelow 1921; growth after Baranyi & Roberts 1994, Rosso et al. 1993 and 1995; constants as published.
"""

import json

import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq
from scipy.stats import linregress

kept = {}


def line(points):
    t, T = zip(*points)
    return lambda x: float(np.interp(x, t, T)), sorted(set(t))


def along(rate, points, upto=None):
    """Integral of rate(T) along straight lines, piece by piece, split at every whole degree and at corners."""
    course, knots = line(points)
    end = knots[-1] if upto is None else upto
    total = 0.0
    for a, b in zip(knots, knots[1:]):
        b = min(b, end)
        if b <= a:
            continue
        cuts = np.linspace(a, b, 41)
        total += sum(quad(lambda x: rate(course(x)), p, q, epsabs=1e-13, epsrel=1e-12)[0] for p, q in zip(cuts, cuts[1:]))
    return total


def lethal(z, ref=70.0):
    return lambda T: 10 ** ((T - ref) / z)


# Holds and ramps [min at 70 °C].
for T, m in ((60, 45), (65, 10), (75, 0.5), (80, 0.1), (63, 20), (64, 15)):
    for z in (7.5, 6):
        kept[f"hold {T} {m} {z}"] = along(lethal(z), [(0, T), (m, T)])
for T0, m in ((60, 10), (20, 30)):
    kept[f"ramp {T0} {m}"] = along(lethal(7.5), [(0, T0), (m, 70)])
neck = [(0, 5), (10, 25), (20, 45), (30, 58), (35, 62), (40, 65), (45, 67), (50, 68), (55, 66), (60, 60), (70, 45), (80, 30)]
for z in (7.5, 6, 10):
    kept[f"neck {z}"] = along(lethal(z), neck)
for upto in (40, 45, 50, 60):
    kept[f"neck to {upto}"] = along(lethal(7.5), neck, upto)

# Decimal reduction times: a straight line through log D.
lists = {
    "perfringens beef": [(55, 21.6), (57.5, 10.2), (60, 5.3), (62.5, 1.6)],
    "salmonella broth": [(55, 4.87), (58, 2.72), (60, 1.3), (62, 0.41)],
    "trichinella": [(49.0, 1260), (50.0, 570), (51.1, 270), (52.2, 120), (53.4, 60), (54.5, 30), (55.6, 15), (56.7, 6), (57.8, 3), (58.9, 2), (60.0, 1)],
}
for name, pairs in lists.items():
    T, D = map(np.array, zip(*pairs))
    fit = linregress(T, np.log10(D))
    kept[f"{name} z"] = -1 / fit.slope
    kept[f"{name} D60"] = 10 ** (fit.intercept + 60 * fit.slope)
influenza = [(60, 507), (65, 42), (70, 3.5), (73.9, 0.51)]
for (a, x), (b, y) in zip(influenza, influenza[1:]):
    kept[f"influenza z {a}"] = (b - a) / np.log10(x / y)


# Growth rates.
def cardinal(T, lo, opt, hi):
    if not lo < T < hi:
        return 0.0
    top = (T - hi) * (T - lo) ** 2
    return top / ((opt - lo) * ((opt - lo) * (T - opt) - (opt - hi) * (opt + lo - 2 * T)))


def acid(p, lo, opt, hi):
    ends = (p - lo) * (p - hi)
    return ends / (ends - (p - opt) ** 2)


chicken = lambda T: 6.06 * cardinal(T, 8.8, 46.4, 51.5)
beef = lambda T: 5.64 * cardinal(T, 10.3, 43.5, 53.4)
cured = lambda T: 0.00243 * (T - 13.5) ** 2 * (1 - np.exp(0.41 * (T - 50.6))) if 13.5 < T < 50.6 else 0.0
for T in (10, 15, 20, 25, 30, 35, 40, 45, 46.4, 48, 50, 51):
    kept[f"chicken {T}"] = chicken(T)
for T in (12, 20, 30, 40, 43.5, 48):
    kept[f"beef {T}"] = beef(T)
for T in (15, 20, 25, 30, 35, 40, 45, 48, 50):
    kept[f"cured {T}"] = cured(T)
for T in (2, 4, 5, 8, 10, 20, 37, 43):
    kept[f"listeria T {T}"] = cardinal(T, -1.72, 37, 45.5)
for p in (5.0, 5.6, 6.0, 6.5, 7.1, 8.0):
    kept[f"listeria pH {p}"] = acid(p, 4.71, 7.1, 9.61)
for a in (0.92, 0.94, 0.96, 0.97, 0.98, 0.99, 0.997):
    kept[f"listeria aw {a}"] = cardinal(a, 0.913, 0.997, 1.0)
for T in (8, 10, 15, 20, 30, 43):
    kept[f"salmonella T {T}"] = cardinal(T, 5.2, 38, 46.2)

# Integrals over cooling courses [ln units], hours and °C.
courses = {
    "option 1": [(0, 54.4), (1.5, 26.7), (6.5, 4.4)],
    "food code": [(0, 57), (2, 21), (6, 5)],
    "90 minutes": [(0, 63), (1.5, 8)],
}
for name, points in courses.items():
    I = along(chicken, points)
    kept[f"{name} integral"] = I
    kept[f"{name} h0 for one log"] = np.log(np.expm1(I) / 9)


# The two differential equations, in logarithms: d ln q/dt = µ, d ln N/dt = µ q/(1 + q) (1 − N/Nmax).
def grow(mu, hours, h0, start, most):
    q0 = -np.log(np.expm1(h0)) if h0 > 0 else 50.0
    room = (most - start) * np.log(10)

    def slope(t, y):
        q, n = y
        m = mu(t)
        return [m, m / (1 + np.exp(-q)) * -np.expm1(n - room)]

    end = solve_ivp(slope, (0, hours), [q0, 0.0], method="DOP853", rtol=1e-12, atol=1e-13, max_step=hours / 400)
    return end.y[1, -1] / np.log(10)


fall = lambda t: 51 * (11 / 51) ** (t / 8)
for h0 in (0, 3, 4, 5):
    kept[f"cured fall {h0}"] = grow(lambda t: cured(fall(t)), 8, h0, 2, 8)
kept["cured fall integral"] = sum(quad(lambda t: cured(fall(t)), a, b, epsabs=1e-12)[0] for a, b in zip(np.linspace(0, 8, 161), np.linspace(0, 8, 161)[1:]))
kept["chicken fall 5"] = grow(lambda t: chicken(fall(t)), 8, 5, 2, 8)
for name, points in courses.items():
    course, knots = line(points)
    for h0 in (0, 3, 5, 5.8):
        kept[f"{name} growth {h0}"] = grow(lambda t: chicken(course(t)), knots[-1], h0, 2, 12)
for mu in (0.05, 0.4, 1.0, 3.0):
    for h0 in (0, 0.5, 2, 6):
        for room in (3, 6):
            for t in (1, 4, 12, 40):
                kept[f"steady {mu:g} {h0:g} {room} {t}"] = grow(lambda _: mu, t, h0, 0, room)
for t in (1, 2, 3, 5, 10, 15, 20):
    kept[f"table {t}"] = 3 + grow(lambda _: 1.0, t, 2, 3, 9)

# A Newton curve's crossings [h].
newton = lambda t: 2 + 73 * np.exp(-1.2 * t)
for C in (63, 57, 54.444, 26.667, 21, 8, 5, 4.444):
    kept[f"newton {C}"] = brentq(lambda t: newton(t) - C, 0, 20, xtol=1e-14)

print(json.dumps({name: float(value) for name, value in kept.items()}, indent=2))
