"""The same mesh, steps and Newton iterations as the engine took, in numpy and scipy: `sparse` (SuperLU, symmetric ordering) or `banded` (LAPACK).

    python3 conduction_scipy.py case.bin sparse|banded repeats
Prints best and median milliseconds and the largest difference from the engine's answer."""

import json
import sys
import time

import numpy as np
from scipy.linalg import cho_solve_banded, cholesky_banded
from scipy.sparse import csc_matrix
from scipy.sparse.linalg import splu

data = np.fromfile(sys.argv[1])
kind, repeats = sys.argv[2], int(sys.argv[3])
position = 0


def block(size):
    global position
    position += size
    return data[position - size : position]


n, nu, nv, mats, nexp, nsteps, nstages, tlen, stages = (int(v) for v in block(9))
low, per, ref, z, start, gam = block(6)
tables = [block(tlen).reshape(-1, 5) for _ in range(mats)]
nodes, volumes = [], []
for _ in range(mats):
    size = int(block(1)[0])
    nodes.append(block(size).astype(int))
    volumes.append(block(size))
exposed, area = block(nexp).astype(int), block(nexp)
nq = (nu - 1) * (nv - 1)
layer, metric = block(nq).astype(int), block(12 * nq).reshape(nq, 4, 3)
c, a, b, e = block(stages), block(stages**2).reshape(stages, stages), block(stages), block(stages)
stage_h, stage_m = block(nstages), block(nstages)
steps, expected = block(nsteps * (2 + stages)).reshape(nsteps, -1), block(n)

pa = (np.arange(nv - 1)[:, None] * nu + np.arange(nu - 1)).ravel()
corner = np.stack([pa, pa + 1, pa + nu, pa + nu + 1], 1)
k_index = layer[:, None] * n + corner
k_all = np.zeros((mats, n))
top = tlen // 5 - 1
flat_corner = corner.T.ravel()


def tables_at(T, capacity=False):
    U = np.zeros(n)
    C = np.zeros(n) if capacity else None
    for m in range(mats):
        x = (T[nodes[m]] - low) * per
        cell = np.clip(x.astype(int), 0, top)
        s = (x - cell) / per
        t = tables[m][cell]
        k_all[m, nodes[m]] = t[:, 0] + s * t[:, 1]
        U[nodes[m]] += volumes[m] * (t[:, 4] + s * (t[:, 2] + 0.5 * s * t[:, 3]))
        if capacity:
            C[nodes[m]] += volumes[m] * (t[:, 2] + s * t[:, 3])
    return (U, C) if capacity else U


def flow(T, h, medium):
    w = k_all.ravel()[k_index][:, :, None] * metric
    Ta, Tb, Tc, Td = T[corner].T
    lo, hi, le, ri = Tb - Ta, Td - Tc, Tc - Ta, Td - Tb
    ql = lo * (w[:, 0, 0] + w[:, 1, 0]) + le * w[:, 0, 1] + ri * w[:, 1, 1]
    qh = hi * (w[:, 2, 0] + w[:, 3, 0]) + le * w[:, 2, 1] + ri * w[:, 3, 1]
    qe = le * (w[:, 0, 2] + w[:, 2, 2]) + lo * w[:, 0, 1] + hi * w[:, 2, 1]
    qr = ri * (w[:, 1, 2] + w[:, 3, 2]) + lo * w[:, 1, 1] + hi * w[:, 3, 1]
    F = np.bincount(flat_corner, np.concatenate([ql + qe, qr - ql, qh - qe, -qh - qr]), n)
    F[exposed] += h * area * (medium - T[exposed])
    return F


ii = np.concatenate([corner[:, [0, 1, 2, 3]].T.ravel(), *[corner[:, j] for j in (1, 2, 2, 3, 3, 3)]])
jj = np.concatenate([corner[:, [0, 1, 2, 3]].T.ravel(), *[corner[:, j] for j in (0, 0, 1, 0, 1, 2)]])
band = nu + 1
lower = (ii - jj) * n + jj
# Where each entry of the lower triangle, and its mirror, goes in a compressed-column matrix.
rows, cols = np.concatenate([ii, jj[4 * nq :]]), np.concatenate([jj, ii[4 * nq :]])
unique, inverse = np.unique(cols * n + rows, return_inverse=True)
indices, indptr = unique % n, np.searchsorted(unique // n, np.arange(n + 1))
diagonal = np.searchsorted(unique, np.arange(n) * (n + 1))


def factorised(C, tau, h):
    w = k_all.ravel()[k_index][:, :, None] * metric
    A1, A2 = w[:, 0, 0] + w[:, 1, 0], w[:, 2, 0] + w[:, 3, 0]
    B1, B2 = w[:, 0, 2] + w[:, 2, 2], w[:, 1, 2] + w[:, 3, 2]
    xa, xb, xc, xd = (w[:, q, 1] for q in range(4))
    on = [A1 + B1 + 2 * xa, A1 + B2 - 2 * xb, A2 + B1 - 2 * xc, A2 + B2 + 2 * xd]
    off = [xb - xa - A1, xc - xa - B1, xa + xd, -xb - xc, xb - xd - B2, xc - xd - A2]
    extra = C / tau
    extra[exposed] += h * area
    if kind == "banded":
        ab = np.bincount(lower, np.concatenate(on + off), (band + 1) * n).reshape(band + 1, n)
        ab[0] += extra
        factor = cholesky_banded(ab, lower=True, overwrite_ab=True, check_finite=False)
        return lambda r: cho_solve_banded((factor, True), r, check_finite=False)
    values = np.bincount(inverse, np.concatenate(on + off + off), len(unique))
    values[diagonal] += extra
    matrix = csc_matrix((values, indices, indptr), shape=(n, n))
    return splu(matrix, permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options={"SymmetricMode": True}).solve


def hermite(s, h, y0, y1, d0, d1):
    r = 1 - s
    return y0 * (1 + 2 * s) * r * r + y1 * s * s * (3 - 2 * s) + h * s * r * (d0 * r - d1 * s)


gx = np.array([0.06943184420297372, 0.33000947820757187, 0.6699905217924281, 0.9305681557970262])
gw = np.array([0.17392742256872684, 0.3260725774312731, 0.3260725774312731, 0.17392742256872684])


def lethal(h, y0, y1, d0, d1):
    # As many pieces for all nodes as the fastest needs would be wasteful: grouped by how many.
    rise = y1 - y0
    bend = (abs(h * d0 - rise) + abs(h * d1 - rise)) / 4
    pieces = np.clip(np.ceil((abs(rise) + 2 * bend) / z), 1, 64).astype(int)
    out = np.zeros(n)
    for count in np.unique(pieces):
        q = pieces == count
        s = ((np.arange(count)[:, None] + gx).ravel() / count)[:, None]
        T = hermite(s, h, y0[q], y1[q], d0[q], d1[q])
        out[q] = h / count * (np.tile(gw, count) @ np.exp(np.log(10) / z * (T - ref)))
    return out


def march():
    T0 = np.full(n, start)
    P = np.zeros(n)
    U0 = tables_at(T0)
    stage, before, K = -1, None, [None] * stages
    for row in steps:
        h, tau = row[0], row[0] * gam
        fresh = int(row[1]) != stage
        stage = int(row[1])
        H, M = stage_h[stage], stage_m[stage]
        if fresh:
            _, C = tables_at(T0, True)
            K[0] = flow(T0, H, M)
            slope0 = K[0] / C
        smooth = not fresh and h <= 4 * before[0]
        ahead = (lambda t: hermite(1 + t / before[0], *before)) if smooth else (lambda t: T0)
        _, C = tables_at(ahead(h / 2), True)
        solve = factorised(C, tau, H)
        latest = 0
        for j in range(1, stages):
            G = U0 + sum(h * a[j, l] * K[l] for l in range(j) if a[j, l] != 0)
            T = hermite(c[j] / c[latest], c[latest] * h, T0, late, slope0, K[latest] / C) if latest else ahead(c[j] * h).copy()
            for _ in range(int(row[2 + j - 1])):
                U = tables_at(T)
                T = T + solve(flow(T, H, M) - (U - G) / tau)
            U = tables_at(T)
            K[j] = (U - G) / tau
            if not latest or c[j] > c[latest]:
                latest, late = j, T
        solve(sum(e[j] * K[j] for j in range(stages)))
        slope = K[-1] / C
        P += lethal(h, T0, T, slope0, slope)
        before = (h, T0, T, slope0, slope)
        T0, U0, slope0 = T, U, slope
        K[0] = K[-1]
    return np.abs(T0 - expected).max()


times = []
for _ in range(repeats):
    begin = time.perf_counter()
    worst = march()
    times.append((time.perf_counter() - begin) * 1e3)
times.sort()
json.dump({"best": times[0], "median": times[len(times) // 2], "difference": float(worst)}, sys.stdout)
