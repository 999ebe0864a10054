/* The same mesh, the same steps and the same number of Newton iterations as the engine took, in plain C. Reads a case written by
 * heat.bench.ts, repeats it, prints the best and median time in milliseconds and the largest difference from the engine's answer. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static double *data;
static size_t at = 0;
static double next(void) { return data[at++]; }
static double *block(size_t n) { double *p = data + at; at += n; return p; }
static int *ints(size_t n) { int *p = malloc(n * sizeof *p); for (size_t i = 0; i < n; i++) p[i] = (int)next(); return p; }
static double *zeros(size_t n) { return calloc(n + 8, sizeof(double)); }

static int n, nu, nv, mats, nexp, nsteps, nstages, tlen, stages;
static double low, per, ref, z, start, gam;
static double *table[4], *vol[4], *area, *metric, *c, *a, *b, *e, *steps, *expected, *stage_h, *stage_m;
static int count[4], *nodes[4], *exposed, *layer;
static double *kk[4];
static int band, width;
static double *A, *inv, *panel, *X;

static void store(const double *T, double *U, double *C, int cond) {
  memset(U, 0, n * sizeof(double));
  if (C) memset(C, 0, n * sizeof(double));
  for (int m = 0; m < mats; m++) {
    int top = tlen / 5 - 1;
    for (int q = 0; q < count[m]; q++) {
      int i = nodes[m][q];
      double x = (T[i] - low) * per;
      int cell = x <= 0 ? 0 : x >= top ? top : (int)x;
      double s = (x - cell) / per;
      const double *t = table[m] + 5 * cell;
      if (cond) kk[m][i] = t[0] + s * t[1];
      U[i] += vol[m][q] * (t[4] + s * (t[2] + 0.5 * s * t[3]));
      if (C) C[i] += vol[m][q] * (t[2] + s * t[3]);
    }
  }
}

static void flow(const double *T, double h, double medium, double *F) {
  memset(F, 0, n * sizeof(double));
  for (int q = 0; q < nexp; q++) F[exposed[q]] = h * area[q] * (medium - T[exposed[q]]);
  for (int j = 0; j + 1 < nv; j++)
    for (int i = 0; i + 1 < nu; i++) {
      int q = j * (nu - 1) + i, p = j * nu + i, r = p + nu;
      const double *k = kk[layer[q]], *w = metric + 12 * q;
      double lo = T[p + 1] - T[p], hi = T[r + 1] - T[r], le = T[r] - T[p], ri = T[r + 1] - T[p + 1];
      double xa = k[p] * w[1], xb = k[p + 1] * w[4], xc = k[r] * w[7], xd = k[r + 1] * w[10];
      double ql = lo * (k[p] * w[0] + k[p + 1] * w[3]) + le * xa + ri * xb;
      double qh = hi * (k[r] * w[6] + k[r + 1] * w[9]) + le * xc + ri * xd;
      double qe = le * (k[p] * w[2] + k[r] * w[8]) + lo * xa + hi * xc;
      double qr = ri * (k[p + 1] * w[5] + k[r + 1] * w[11]) + lo * xb + hi * xd;
      F[p] += ql + qe;
      F[p + 1] += qr - ql;
      F[r] += qh - qe;
      F[r + 1] -= qh + qr;
    }
}

#define ROW(i) (A + (size_t)((i) + band) * width + band - (i))

static void assemble(const double *C, double tau, double h) {
  memset(A, 0, (size_t)(n + band + 4) * width * sizeof(double));
  for (int i = 0; i < n; i++) ROW(i)[i] = C[i] / tau;
  for (int q = 0; q < nexp; q++) ROW(exposed[q])[exposed[q]] += h * area[q];
  for (int j = 0; j + 1 < nv; j++)
    for (int i = 0; i + 1 < nu; i++) {
      int q = j * (nu - 1) + i, p = j * nu + i, r = p + nu;
      const double *k = kk[layer[q]], *w = metric + 12 * q;
      double A1 = k[p] * w[0] + k[p + 1] * w[3], A2 = k[r] * w[6] + k[r + 1] * w[9];
      double B1 = k[p] * w[2] + k[r] * w[8], B2 = k[p + 1] * w[5] + k[r + 1] * w[11];
      double xa = k[p] * w[1], xb = k[p + 1] * w[4], xc = k[r] * w[7], xd = k[r + 1] * w[10];
      ROW(p)[p] += A1 + B1 + 2 * xa;
      ROW(p + 1)[p + 1] += A1 + B2 - 2 * xb;
      ROW(r)[r] += A2 + B1 - 2 * xc;
      ROW(r + 1)[r + 1] += A2 + B2 + 2 * xd;
      ROW(p + 1)[p] += xb - xa - A1;
      ROW(r)[p] += xc - xa - B1;
      ROW(r)[p + 1] += xa + xd;
      ROW(r + 1)[p] -= xb + xc;
      ROW(r + 1)[p + 1] += xb - xd - B2;
      ROW(r + 1)[r] += xc - xd - A2;
    }
}

/* Band Cholesky, four columns at a time. */
static void factorise(void) {
  for (int p = 0; p < n; p += 4) {
    int cols = n - p < 4 ? n - p : 4, last = p + band + cols - 1;
    if (last > n - 1) last = n - 1;
    for (int q = 0; q < cols; q++) {
      int j = p + q;
      double *rj = ROW(j), d = rj[j];
      for (int k = p; k < j; k++) d -= rj[k] * rj[k];
      d = sqrt(d);
      rj[j] = d;
      inv[j] = 1 / d;
      for (int i = j + 1; i < p + cols; i++) {
        double *ri = ROW(i), s = ri[j];
        for (int k = p; k < j; k++) s -= ri[k] * rj[k];
        ri[j] = s * inv[j];
      }
    }
    if (cols < 4) continue;
    int first = p + 4, m = 0;
    const double *r1 = ROW(p + 1), *r2 = ROW(p + 2), *r3 = ROW(p + 3);
    for (int i = first; i <= last; i++, m++) {
      double *ri = ROW(i);
      int lead = i - band - p;
      double b0 = lead <= 0 ? ri[p] * inv[p] : 0;
      double b1 = lead <= 1 ? (ri[p + 1] - b0 * r1[p]) * inv[p + 1] : 0;
      double b2 = lead <= 2 ? (ri[p + 2] - b0 * r2[p] - b1 * r2[p + 1]) * inv[p + 2] : 0;
      double b3 = (ri[p + 3] - b0 * r3[p] - b1 * r3[p + 1] - b2 * r3[p + 2]) * inv[p + 3];
      if (lead <= 0) ri[p] = b0;
      if (lead <= 1) ri[p + 1] = b1;
      if (lead <= 2) ri[p + 2] = b2;
      ri[p + 3] = b3;
      panel[m] = b0;
      panel[m + band + 4] = b1;
      panel[m + 2 * (band + 4)] = b2;
      panel[m + 3 * (band + 4)] = b3;
    }
    const double *restrict p0 = panel, *restrict p1 = panel + band + 4, *restrict p2 = p1 + band + 4, *restrict p3 = p2 + band + 4;
    for (int i = 0; i < m; i++) {
      double *restrict ri = ROW(first + i) + first;
      double q0 = p0[i], q1 = p1[i], q2 = p2[i], q3 = p3[i];
      for (int j = 0; j <= i; j++) ri[j] -= q0 * p0[j] + q1 * p1[j] + (q2 * p2[j] + q3 * p3[j]);
    }
  }
}

static void solve(double *r) {
  memcpy(X + band, r, n * sizeof(double));
  int whole = n - n % 4;
  for (int i = 0; i < whole; i += 4) {
    double *p = A + (size_t)(i + band) * width, *q = p + width - 1, *s = q + width - 1, *t = s + width - 1, *x = X + i;
    double f = p[0] * x[0] + p[1] * x[1] + p[2] * x[2], g = q[1] * x[1] + q[2] * x[2], h = s[2] * x[2], l = 0;
    for (int k = 3; k < band; k++) {
      double v = x[k];
      f += p[k] * v;
      g += q[k] * v;
      h += s[k] * v;
      l += t[k] * v;
    }
    x += band;
    x[0] = (x[0] - f) * inv[i];
    x[1] = (x[1] - g - q[band] * x[0]) * inv[i + 1];
    x[2] = (x[2] - h - s[band] * x[0] - s[band + 1] * x[1]) * inv[i + 2];
    x[3] = (x[3] - l - t[band] * x[0] - t[band + 1] * x[1] - t[band + 2] * x[2]) * inv[i + 3];
  }
  for (int i = whole; i < n; i++) {
    double f = 0, *p = A + (size_t)(i + band) * width;
    for (int k = 0; k < band; k++) f += p[k] * X[i + k];
    X[i + band] = (X[i + band] - f) * inv[i];
  }
  for (int i = n - 1; i >= whole; i--) {
    double *p = A + (size_t)(i + band) * width, y = X[i + band] *= inv[i];
    for (int k = 0; k < band; k++) X[i + k] -= p[k] * y;
  }
  for (int i = whole - 4; i >= 0; i -= 4) {
    double *restrict p = A + (size_t)(i + band) * width, *restrict q = p + width - 1, *restrict s = q + width - 1, *restrict t = s + width - 1;
    double *restrict x = X + i;
    double y3 = x[band + 3] * inv[i + 3], y2 = (x[band + 2] - t[band + 2] * y3) * inv[i + 2];
    double y1 = (x[band + 1] - t[band + 1] * y3 - s[band + 1] * y2) * inv[i + 1];
    double y0 = (x[band] - t[band] * y3 - s[band] * y2 - q[band] * y1) * inv[i];
    x[band] = y0;
    x[band + 1] = y1;
    x[band + 2] = y2;
    x[band + 3] = y3;
    x[0] -= p[0] * y0;
    x[1] -= p[1] * y0 + q[1] * y1;
    x[2] -= p[2] * y0 + q[2] * y1 + s[2] * y2;
    for (int k = 3; k < band; k++) x[k] -= p[k] * y0 + q[k] * y1 + (s[k] * y2 + t[k] * y3);
  }
  memcpy(r, X + band, n * sizeof(double));
}

static double hermite(double s, double h, double y0, double y1, double d0, double d1) {
  double r = 1 - s;
  return y0 * (1 + 2 * s) * r * r + y1 * s * s * (3 - 2 * s) + h * s * r * (d0 * r - d1 * s);
}
static const double gx[4] = {0.06943184420297372, 0.33000947820757187, 0.6699905217924281, 0.9305681557970262};
static const double gw[4] = {0.17392742256872684, 0.3260725774312731, 0.3260725774312731, 0.17392742256872684};
static double lethal(double h, double y0, double y1, double d0, double d1) {
  double rise = y1 - y0, bend = (fabs(h * d0 - rise) + fabs(h * d1 - rise)) / 4, sum = 0, rate = log(10) / z;
  if ((y0 > y1 ? y0 : y1) + bend < ref - 15 * z) return 0;
  int pieces = (int)ceil((fabs(rise) + 2 * bend) / z);
  pieces = pieces < 1 ? 1 : pieces > 64 ? 64 : pieces;
  for (int p = 0; p < pieces; p++)
    for (int g = 0; g < 4; g++) sum += gw[g] * exp(rate * (hermite((p + gx[g]) / pieces, h, y0, y1, d0, d1) - ref));
  return sum * h / pieces;
}

static double *T, *T0, *U, *U0, *F, *C, *R, *G, *guess, *late, *slope, *slope0, *P, *pT0, *pT1, *pd0, *pd1, *K[8];

static double march(void) {
  for (int i = 0; i < n; i++) T0[i] = start;
  memset(P, 0, n * sizeof(double));
  store(T0, U0, NULL, 1);
  int stage = -1;
  double hb = 0;
  for (int q = 0; q < nsteps; q++) {
    const double *s = steps + q * (2 + stages);
    double h = s[0], tau = h * gam;
    int fresh = (int)s[1] != stage;
    stage = (int)s[1];
    double H = stage_h[stage], M = stage_m[stage];
    if (fresh) {
      store(T0, U, C, 1);
      flow(T0, H, M, K[0]);
      for (int i = 0; i < n; i++) slope0[i] = K[0][i] / C[i];
    }
    int smooth = !fresh && h <= 4 * hb;
    double x = 1 + 0.5 * h / hb;
    for (int i = 0; i < n; i++) guess[i] = smooth ? hermite(x, hb, pT0[i], pT1[i], pd0[i], pd1[i]) : T0[i];
    store(guess, U, C, 1);
    assemble(C, tau, H);
    factorise();
    int latest = 0;
    for (int j = 1; j < stages; j++) {
      memcpy(G, U0, n * sizeof(double));
      for (int l = 0; l < j; l++) {
        double w = h * a[j * stages + l];
        if (w != 0) for (int i = 0; i < n; i++) G[i] += w * K[l][i];
      }
      if (latest) {
        double cl = c[latest], hl = cl * h, v = c[j] / cl, y = 1 - v;
        double w0 = (1 + 2 * v) * y * y, w1 = v * v * (3 - 2 * v), v0 = hl * v * y * y, v1 = -hl * v * v * y;
        for (int i = 0; i < n; i++) T[i] = w0 * T0[i] + w1 * late[i] + v0 * slope0[i] + v1 * K[latest][i] / C[i];
      } else {
        double v = 1 + c[j] * h / hb;
        for (int i = 0; i < n; i++) T[i] = smooth ? hermite(v, hb, pT0[i], pT1[i], pd0[i], pd1[i]) : T0[i];
      }
      for (int it = 0; it < (int)s[2 + j - 1]; it++) {
        store(T, U, NULL, 1);
        flow(T, H, M, F);
        for (int i = 0; i < n; i++) R[i] = F[i] - (U[i] - G[i]) / tau;
        solve(R);
        for (int i = 0; i < n; i++) T[i] += R[i];
      }
      store(T, U, NULL, 0);
      for (int i = 0; i < n; i++) K[j][i] = (U[i] - G[i]) / tau;
      if (!latest || c[j] > c[latest]) {
        latest = j;
        memcpy(late, T, n * sizeof(double));
      }
    }
    memset(R, 0, n * sizeof(double));
    for (int j = 0; j < stages; j++) for (int i = 0; i < n; i++) R[i] += e[j] * K[j][i];
    solve(R);
    for (int i = 0; i < n; i++) slope[i] = K[stages - 1][i] / C[i];
    for (int i = 0; i < n; i++) P[i] += lethal(h, T0[i], T[i], slope0[i], slope[i]);
    memcpy(pT0, T0, n * sizeof(double));
    memcpy(pT1, T, n * sizeof(double));
    memcpy(pd0, slope0, n * sizeof(double));
    memcpy(pd1, slope, n * sizeof(double));
    memcpy(T0, T, n * sizeof(double));
    memcpy(U0, U, n * sizeof(double));
    memcpy(K[0], K[stages - 1], n * sizeof(double));
    memcpy(slope0, slope, n * sizeof(double));
    hb = h;
  }
  double worst = 0;
  for (int i = 0; i < n; i++) worst = fmax(worst, fabs(T0[i] - expected[i]));
  return worst;
}

static int rising(const void *x, const void *y) { return *(const double *)x < *(const double *)y ? -1 : 1; }

int main(int argc, char **argv) {
  FILE *f = argc > 1 ? fopen(argv[1], "rb") : NULL;
  if (!f) return 1;
  fseek(f, 0, SEEK_END);
  long size = ftell(f);
  rewind(f);
  data = malloc(size);
  if (fread(data, 1, size, f) != (size_t)size) return 1;
  int repeats = argc > 2 ? atoi(argv[2]) : 20;
  n = next(); nu = next(); nv = next(); mats = next(); nexp = next(); nsteps = next(); nstages = next(); tlen = next(); stages = next();
  low = next(); per = next(); ref = next(); z = next(); start = next(); gam = next();
  for (int m = 0; m < mats; m++) table[m] = block(tlen);
  for (int m = 0; m < mats; m++) { count[m] = next(); nodes[m] = ints(count[m]); vol[m] = block(count[m]); kk[m] = zeros(n); }
  exposed = ints(nexp); area = block(nexp);
  layer = ints((nu - 1) * (nv - 1)); metric = block((size_t)12 * (nu - 1) * (nv - 1));
  c = block(stages); a = block(stages * stages); b = block(stages); e = block(stages);
  stage_h = block(nstages); stage_m = block(nstages);
  steps = block((size_t)nsteps * (2 + stages)); expected = block(n);
  band = nu + 1; width = band + 1;
  A = zeros((size_t)(n + band + 4) * width); inv = zeros(n); panel = zeros(4 * (band + 4)); X = zeros(n + band);
  double **all[] = {&T, &T0, &U, &U0, &F, &C, &R, &G, &guess, &late, &slope, &slope0, &P, &pT0, &pT1, &pd0, &pd1};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) *all[i] = zeros(n);
  for (int j = 0; j < stages; j++) K[j] = zeros(n);
  double ms[1000], worst = 0;
  for (int r = 0; r < repeats && r < 1000; r++) {
    struct timespec t0, t1;
    clock_gettime(CLOCK_MONOTONIC, &t0);
    worst = march();
    clock_gettime(CLOCK_MONOTONIC, &t1);
    ms[r] = (t1.tv_sec - t0.tv_sec) * 1e3 + (t1.tv_nsec - t0.tv_nsec) / 1e6;
  }
  qsort(ms, repeats, sizeof(double), rising);
  printf("{\"best\": %.3f, \"median\": %.3f, \"difference\": %.3e}\n", ms[0], ms[repeats / 2], worst);
  return 0;
}
