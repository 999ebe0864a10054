"""Yields of parts, by scipy: intervals, a prior integrated by brute force, Welch's difference, a line through log2, robust scores.

Joint cost in exact fractions, with largest remainders, on a small tree.

It shares only the numbers below with the engine. They are invented to exercise the arithmetic and say nothing of any animal.
"""

import json
from fractions import Fraction

import numpy as np
from scipy import stats

LEGS = np.array([0.212, 0.205, 0.231, 0.218, 0.199, 0.224])
NECKS = np.array([0.052, 0.061, 0.047, 0.055])
CUTTER_A = np.array([0.412, 0.405, 0.420, 0.409, 0.417])
CUTTER_B = np.array([0.398, 0.401, 0.391, 0.404])
LEARNING = [(1, 0.380), (2, 0.391), (3, 0.389), (5, 0.402), (8, 0.399), (13, 0.411)]
SLIP = np.array([0.21, 0.22, 0.20, 0.215, 0.208, 0.45])
out = {}


def logit(x):
    return np.log(x / (1 - x))


def share(z):
    return 1 / (1 + np.exp(-z))


def put(name, value):
    out[name] = float(value)


for p, df in [(0.975, 1), (0.975, 4), (0.975, 7.3), (0.975, 30), (0.975, 999)]:
    put(f"t {p} {df}", stats.t.ppf(p, df))

for name, x in [("legs", LEGS), ("necks", NECKS)]:
    n = len(x)
    put(f"{name} mean", x.mean())
    put(f"{name} sd", x.std(ddof=1))
    low, high = stats.t.interval(0.95, n - 1, loc=x.mean(), scale=stats.sem(x))
    put(f"{name} low", low)
    put(f"{name} high", high)
    z = logit(x)
    put(f"{name} centre", share(z.mean()))
    low, high = stats.t.interval(0.95, n - 1, loc=z.mean(), scale=stats.sem(z))
    put(f"{name} centre low", share(low))
    put(f"{name} centre high", share(high))
    low, high = stats.t.interval(0.95, n - 1, loc=z.mean(), scale=z.std(ddof=1) * np.sqrt(1 + 1 / n))
    put(f"{name} next low", share(low))
    put(f"{name} next high", share(high))
    for r in (0.05, 0.1):
        k = 2
        while stats.t.ppf(0.975, k - 1) * x.std(ddof=1) / np.sqrt(k) > r * x.mean():
            k += 1
        put(f"{name} animals {r}", k)


def posterior(z, mean, weight, sd):
    """Marginal of the mean and of the next value on a grid, from the likelihoods themselves: no conjugate algebra."""
    scale = max(np.std(np.append(z, mean)), 0.02)
    mu = np.linspace(mean - 15 * scale, mean + 15 * scale, 3001)
    logs = np.linspace(np.log(scale) - 4, np.log(scale) + 3.5, 601)
    M, L = np.meshgrid(mu, logs, indexing="ij")
    S = np.exp(L)
    # Flat in the mean and in the logarithm of the spread.
    log_post = np.zeros_like(M)
    for v in z:
        log_post += stats.norm.logpdf(v, M, S)
    log_post += stats.norm.logpdf(mean, M, S / np.sqrt(weight))
    if sd is not None:
        log_post += stats.chi2.logpdf((weight - 1) * sd**2 / S**2, weight - 1) - 2 * L
    post = np.exp(log_post - log_post.max())
    post /= post.sum()
    cdf = np.cumsum(post.sum(axis=1))
    at_mu = [np.interp(q, cdf - post.sum(axis=1) / 2, mu) for q in (0.025, 0.5, 0.975)]
    small_mu, small_s = mu[::10], np.exp(logs[::4])
    weights = post[::10, ::4]
    weights = weights / weights.sum()
    grid = np.linspace(mean - 12 * scale, mean + 12 * scale, 1201)
    pred = np.array([(weights * stats.norm.cdf(g, small_mu[:, None], small_s[None, :])).sum() for g in grid])
    at_next = [np.interp(q, pred, grid) for q in (0.025, 0.975)]
    return at_mu, at_next


z = logit(NECKS)
for name, p, sd_share, weight in [("with spread", 0.06, 0.006, 6), ("without spread", 0.06, None, 5)]:
    sd = None if sd_share is None else sd_share / (p * (1 - p))
    (low, middle, high), (next_low, next_high) = posterior(z, logit(p), weight, sd)
    for key, value in [("low", low), ("centre", middle), ("high", high), ("next low", next_low), ("next high", next_high)]:
        # Kept to what the grid is good for.
        put(f"prior {name} {key}", round(share(value), 6))

welch = stats.ttest_ind(logit(CUTTER_A), logit(CUTTER_B), equal_var=False)
interval = welch.confidence_interval(0.95)
put("welch low", interval.low)
put("welch high", interval.high)
put("welch degrees", welch.df)

k = np.log2([a for a, _ in LEARNING])
y = logit(np.array([s for _, s in LEARNING]))
line = stats.linregress(k, y)
half = stats.t.ppf(0.975, len(k) - 2) * line.stderr
put("learning slope", line.slope)
put("learning low", line.slope - half)
put("learning high", line.slope + half)

zs = logit(SLIP)
mad = stats.median_abs_deviation(zs)
put("slip score", 0.6745 * (zs[-1] - np.median(zs)) / mad)

three = np.array([[0.2, 0.3, 0.5], [0.25, 0.28, 0.47], [0.18, 0.35, 0.47]])
g = stats.gmean(three, axis=0)
for i, v in enumerate(g / g.sum()):
    put(f"centre of three {i}", v)

# A goose: name, grams, price in pence a kg (None: bone, costs nothing), share, children. 42.37 paid.
GOOSE = ("goose", 3700, None, None, [
    ("legs", 803, 1400, 2, []),
    ("crown", 2601, None, None, [("breasts", 1107, 2500, 7, []), ("frame", 1490, -40, None, [])]),
    ("neck", 213, 300, 1, []),
    ("feet", 51, 0, 0, []),
])
PAID = 4237


def shared(amount, weights):
    total = sum(weights)
    quotas = [amount * w / total for w in weights]
    whole = [q.numerator // q.denominator for q in quotas]
    order = sorted(range(len(quotas)), key=lambda i: (whole[i] - quotas[i], i))
    for i in order[: amount - sum(whole)]:
        whole[i] += 1
    return whole


def rounded(x):
    sign = -1 if x < 0 else 1
    return sign * int(abs(x) + Fraction(1, 2))


def own(piece):
    """What a piece that costs money to be rid of takes: fixed. Otherwise None."""
    _, grams, price, _, children = piece
    return rounded(Fraction(grams * price, 1000)) if not children and price is not None and price < 0 else None


def weight_by(rule, piece):
    _, grams, price, chef, children = piece
    if not children:
        return Fraction(grams) if rule == "weight" else Fraction(grams * price, 1000) if rule == "value" else Fraction(chef)
    if rule == "weight":
        return Fraction(grams)
    below = sum(weight_by(rule, c) for c in children if own(c) is None)
    return below + sum(own(c) for c in children if own(c) is not None) if rule == "value" else below


def spread(rule, piece, amount):
    put(f"{rule} {piece[0]}", amount)
    carriers = [c for c in piece[4] if own(c) is None]
    fixed = [c for c in piece[4] if own(c) is not None]
    for c in fixed:
        put(f"{rule} {c[0]}", own(c))
    if carriers:
        rest = amount - sum(own(c) for c in fixed)
        for c, a in zip(carriers, shared(rest, [weight_by(rule, c) for c in carriers])):
            spread(rule, c, a)


for rule in ("weight", "value", "shares"):
    spread(rule, GOOSE, PAID)

print(json.dumps(out, indent=1))
