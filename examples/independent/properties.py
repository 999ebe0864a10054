"""Thermal properties of food from the published functions of its components, and how they add up.

Run: python3 properties.py > properties.json
Coefficients: Choi & Okos 1986 as reprinted in ASHRAE Handbook—Refrigeration, typed in again here.
"""

import json

kept = {}
K = {
    "protein": (0.17881, 1.1958e-3, -2.7178e-6),
    "fat": (0.18071, -2.7604e-4, -1.7749e-7),
    "carbohydrate": (0.20141, 1.3874e-3, -4.3312e-6),
    "fibre": (0.18331, 1.2497e-3, -3.1683e-6),
    "ash": (0.32962, 1.4011e-3, -2.9069e-6),
    "water": (0.57109, 1.7625e-3, -6.7036e-6),
    "ice": (2.2196, -6.2489e-3, 1.0154e-4),
}
RHO = {
    "protein": (1329.9, -0.51840, 0),
    "fat": (925.59, -0.41757, 0),
    "carbohydrate": (1599.1, -0.31046, 0),
    "fibre": (1311.5, -0.36589, 0),
    "ash": (2423.8, -0.28063, 0),
    "water": (997.18, 3.1439e-3, -3.7574e-3),
    "ice": (916.89, -0.13071, 0),
}
CP = {
    "protein": (2.0082, 1.2089e-3, -1.3129e-6),
    "fat": (1.9842, 1.4733e-3, -4.8008e-6),
    "carbohydrate": (1.5488, 1.9625e-3, -5.9399e-6),
    "fibre": (1.8459, 1.8306e-3, -4.6509e-6),
    "ash": (1.0926, 1.8896e-3, -3.6817e-6),
    "water": (4.1762, -9.0864e-5, 5.4731e-6),
    "water below": (4.0817, -5.3062e-3, 9.9516e-4),
    "ice": (2.0623, 6.0769e-3, 0),
}
at = lambda c, T: c[0] + c[1] * T + c[2] * T * T


def cp(name, T):
    return at(CP["water below" if name == "water" and T < 0 else name], T)


for T in (-20, 5, 20, 65, 100):
    for name in K:
        if name == "ice" and T > 0:
            continue
        kept[f"k {name} {T}"] = at(K[name], T)
        kept[f"rho {name} {T}"] = at(RHO[name], T)
        kept[f"cp {name} {T}"] = cp(name, T)

FOODS = {
    "breast": {"water": 0.74260, "protein": 0.22054, "fat": 0.02568, "ash": 0.01117},
    "skin": {"water": 0.54052, "protein": 0.13289, "fat": 0.32250, "ash": 0.00409},
    "mousse": {"water": 0.67833, "protein": 0.12884, "fat": 0.16253, "carbohydrate": 0.01204, "ash": 0.01826},
}


def levy(k1, k2, p):
    r = k1 / k2
    s = (r - 1) ** 2 / ((r + 1) ** 2 + r / 2)
    b = 2 / s - 1 + 2 * p
    F = (b - (b * b - 8 * p / s) ** 0.5) / 2
    return k2 * ((2 + r) + 2 * (r - 1) * F) / ((2 + r) - (r - 1) * F)


def eucken(kc, kd, p):
    return kc * (2 * kc + kd - 2 * p * (kc - kd)) / (2 * kc + kd + p * (kc - kd))


def kopelman(kc, kd, p):
    L = p ** (1 / 3)
    Q = L * L * (1 - kd / kc)
    return kc * (1 - Q) / (1 - Q * (1 - L))


for name, food in FOODS.items():
    whole = sum(food.values())
    x = {n: v / whole for n, v in food.items()}
    for T in (5, 20, 65):
        volume = {n: v / at(RHO[n], T) for n, v in x.items()}
        total = sum(volume.values())
        phi = {n: v / total for n, v in volume.items()}
        k = {n: at(K[n], T) for n in x}
        rest = 1 - phi["water"]
        k_rest = sum(phi[n] * k[n] for n in x if n != "water") / rest
        parallel = sum(phi[n] * k[n] for n in x)
        heat = sum(x[n] * cp(n, T) for n in x)
        kept[f"{name} {T} density"] = 1 / total
        kept[f"{name} {T} heat"] = heat
        kept[f"{name} {T} parallel"] = parallel
        kept[f"{name} {T} perpendicular"] = 1 / sum(phi[n] / k[n] for n in x)
        kept[f"{name} {T} eucken"] = eucken(k["water"], k_rest, rest)
        kept[f"{name} {T} levy"] = levy(k["water"], k_rest, 1 - rest)
        kept[f"{name} {T} diffusivity"] = kept[f"{name} {T} levy"] * total / heat / 1000

kept["levy spot"] = levy(0.6, 0.18, 0.7)
kept["eucken spot"] = eucken(0.6, 0.18, 0.3)
kept["kopelman spot"] = kopelman(0.6, 0.18, 0.3)

lamb = {"water": 0.7342, "protein": 0.2029, "fat": 0.0525, "ash": 0.0106}
kept["lamb heat 5"] = sum(v * cp(n, 5) for n, v in lamb.items())
kept["lamb 150 kg 10 to 0"] = 150 * kept["lamb heat 5"] * 10
kept["mousse 1 kg 5 to 70 kWh"] = 3.49 * 65 / 3600

if __name__ == "__main__":
    print(json.dumps(kept, indent=2))
