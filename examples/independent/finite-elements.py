"""A tapered body of two layers, 25 min in steam and 25 min in ice water: linear triangles in (axis, radius), consistent mass.

Run: python3 finite-elements.py > finite-elements.json   (numpy and scipy; some ten seconds)
It shares nothing with the engine but the case: other elements (triangles, not sub-volumes), another mass matrix, another time scheme (two-stage
SDIRK, fixed steps), other meshes, LU instead of Cholesky. Properties are constant in each layer.
"""

import json

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu

places = {"middle": (0.1, 0), "half way out": (0.1, 0.013), "under the skin": (0.1, 0.026), "thin end": (0.02, 0), "thick end": (0.15, 0.01)}
case = {
    "profile": [{"at": 0, "diameter": 0.036}, {"at": 0.1, "diameter": 0.058}, {"at": 0.16, "diameter": 0.05}],
    "skin": {"k": 0.36, "rho": 1000, "cp": 3190, "thickness": 0.003},
    "core": {"k": 0.5, "rho": 1030, "cp": 3480},
    "start": 4,
    "stages": [{"medium": 100, "h": 1000, "s": 1500}, {"medium": 1, "h": 400, "s": 1500}],
    "times": [60, 300, 600, 900, 1200, 1500, 1560, 1800, 2100, 2400, 3000],
    "mesh": [56, 16, 150],
}
profile = np.array([[p["at"], p["diameter"] / 2] for p in case["profile"]])
skin, core = case["skin"], case["core"]
nr_core, nr_skin, nz = case["mesh"]


def spread(n, sharp):
    """0 to 1 with points crowded at both ends."""
    s = np.linspace(-1, 1, n + 1)
    return (1 + np.tanh(sharp * s) / np.tanh(sharp)) / 2


length = profile[-1, 0]
z = spread(nz, 1.8) * length
for corner in profile[1:-1, 0]:
    z[np.argmin(abs(z - corner))] = corner
R = np.interp(z, profile[:, 0], profile[:, 1])
inner = np.linspace(0, 1, nr_core + 1) ** 0.85
outer = 1 - (1 - np.linspace(0, 1, nr_skin + 1)[1:]) ** 1.15
rows = [np.concatenate([inner * (r - skin["thickness"]), r - skin["thickness"] + outer * skin["thickness"]]) for r in R]
nr = nr_core + nr_skin + 1
Z = np.repeat(z, nr)
Q = np.concatenate(rows)
node = lambda i, j: j * nr + i

triangles, layer = [], []
for j in range(nz):
    for i in range(nr - 1):
        a, b, c, d = node(i, j), node(i + 1, j), node(i, j + 1), node(i + 1, j + 1)
        # The diagonal alternates, so that neither direction is preferred.
        triangles += [(a, b, d), (a, d, c)] if (i + j) % 2 else [(a, b, c), (b, d, c)]
        layer += [0 if i < nr_core else 1] * 2
tri = np.array(triangles)
of_layer = lambda key: np.where(np.array(layer) == 0, core[key], skin[key])
k, c = of_layer("k"), of_layer("rho") * of_layer("cp")

x, y = Z[tri], Q[tri]
area2 = (x[:, 1] - x[:, 0]) * (y[:, 2] - y[:, 0]) - (x[:, 2] - x[:, 0]) * (y[:, 1] - y[:, 0])
bx = np.stack([y[:, 1] - y[:, 2], y[:, 2] - y[:, 0], y[:, 0] - y[:, 1]], 1) / area2[:, None]
by = np.stack([x[:, 2] - x[:, 1], x[:, 0] - x[:, 2], x[:, 1] - x[:, 0]], 1) / area2[:, None]
area = abs(area2) / 2
rbar = y.mean(1)
stiff = (k * area * rbar)[:, None, None] * (bx[:, :, None] * bx[:, None, :] + by[:, :, None] * by[:, None, :])
# ∫ N_i N_j r dA on a triangle, r linear.
mass = np.empty_like(stiff)
for i in range(3):
    for j in range(3):
        weight = y.sum(1) + y[:, i] + y[:, j]
        mass[:, i, j] = c * area * weight / 60 * (2 if i == j else 1)
n = nr * (nz + 1)
ii, jj = np.repeat(tri, 3, axis=1).ravel(), np.tile(tri, (1, 3)).ravel()
K = coo_matrix((stiff.ravel(), (ii, jj)), shape=(n, n)).tocsc()
M = coo_matrix((mass.ravel(), (ii, jj)), shape=(n, n)).tocsc()

edges = [(node(nr - 1, j), node(nr - 1, j + 1)) for j in range(nz)]
edges += [(node(i, j), node(i + 1, j)) for j in (0, nz) for i in range(nr - 1)]
edges = np.array(edges)
ra, rb = Q[edges[:, 0]], Q[edges[:, 1]]
le = np.hypot(Z[edges[:, 0]] - Z[edges[:, 1]], ra - rb)
values = np.stack([le * (3 * ra + rb) / 12, le * (ra + rb) / 12, le * (ra + rb) / 12, le * (ra + 3 * rb) / 12], 1).ravel()
bi = np.stack([edges[:, 0], edges[:, 0], edges[:, 1], edges[:, 1]], 1).ravel()
bj = np.stack([edges[:, 0], edges[:, 1], edges[:, 0], edges[:, 1]], 1).ravel()
B = coo_matrix((values, (bi, bj)), shape=(n, n)).tocsc()
ones = np.ones(n)


def probe_weights(at, radius):
    j = min(max(np.searchsorted(z, at) - 1, 0), nz - 1)
    s = (at - z[j]) / (z[j + 1] - z[j])
    line = (1 - s) * rows[j] + s * rows[j + 1]
    i = min(max(np.searchsorted(line, radius) - 1, 0), nr - 2)
    t = (radius - line[i]) / (line[i + 1] - line[i])
    return [(node(i, j), (1 - s) * (1 - t)), (node(i + 1, j), (1 - s) * t), (node(i, j + 1), s * (1 - t)), (node(i + 1, j + 1), s * t)]


probes = [probe_weights(*p) for p in places.values()]
T = np.full(n, float(case["start"]))
answers = [[] for _ in probes]
gamma = 1 - 1 / np.sqrt(2)
now = 0.0
for stage in case["stages"]:
    A, load = K + stage["h"] * B, stage["h"] * stage["medium"] * (B @ ones)
    end = now + stage["s"]
    marks = sorted({t for t in case["times"] if now < t <= end} | {end, min(end, now + 1), min(end, now + 60)})
    start = now
    solvers = {}
    for mark in marks:
        longest = 0.05 if now < start + 1 else 1 if now < start + 60 else 6
        steps = max(1, int(np.ceil((mark - now) / longest - 1e-9)))
        h = (mark - now) / steps
        key = round(h, 9)
        if key not in solvers:
            solvers[key] = splu((M + gamma * h * A).tocsc())
        solve = solvers[key].solve
        for _ in range(steps):
            k1 = solve(load - A @ T)
            k2 = solve(load - A @ (T + (1 - gamma) * h * k1))
            T = T + h * ((1 - gamma) * k1 + gamma * k2)
        now = mark
        if mark in case["times"]:
            for q, weights in enumerate(probes):
                answers[q].append(sum(w * T[i] for i, w in weights))
kept = {f"{name} {t} s": float(C) for name, row in zip(places, answers) for t, C in zip(case["times"], row)}
print(json.dumps(kept, indent=2))
