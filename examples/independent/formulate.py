"""Mixes by GLPK: 50 random problems, 30 in any weight and 20 in steps of a scale and packs, each written here as a programme of its own.

GLPK's glpsol must be on the path. `--problems` prints the problems themselves (formulate-problems.json). It shares only the numbers of each problem with the engine; they are invented and say nothing of any food.
"""

import json
import random
import re
import subprocess
import sys
import tempfile
from pathlib import Path

NUTRIENTS = ["water", "protein", "fat", "carbohydrate", "salt"]
rng = random.Random(20261125)


def food():
    parts = [rng.random() ** 2 for _ in range(4)]
    salt = rng.choice([0, 0, 0, 0.01, 0.03])
    whole = sum(parts) or 1
    return {
        **{n: round((1 - salt) * p / whole, 4) for n, p in zip(NUTRIENTS[:4], parts, strict=True)},
        "salt": salt,
    }


def problem(k):
    n = rng.randint(4, 20)
    steps = k >= 30
    foods = [{"nutrients": food(), "pricePerKg": rng.randint(50, 3000)} for _ in range(n)]
    foods.append(
        {
            "nutrients": {"water": 0, "protein": 0, "fat": 0, "carbohydrate": 0, "salt": 1},
            "pricePerKg": 60,
        }
    )
    total = rng.choice([1, 2.5, 12])
    # A mix that is there shows where limits may lie; every seventh problem is drawn without it and may be impossible.
    weights = [rng.random() for _ in foods]
    weights[-1] = 0.02 * sum(weights)
    shares = [w / sum(weights) for w in weights]
    for f, s in zip(foods, shares, strict=True):
        f["lowKg"] = 0
        f["highKg"] = round(rng.uniform(1.1, 4) * s * total, 3) + 0.01
        if rng.random() < 0.2:
            f["lowKg"] = round(0.5 * s * total, 3)
    at = {m: sum(s * f["nutrients"][m] for f, s in zip(foods, shares, strict=True)) for m in NUTRIENTS}
    wild = k % 7 == 6
    limits = []
    for m in ["fat", "protein", "salt"]:
        centre = rng.uniform(0, 0.3) if wild else at[m]
        wide = rng.uniform(0.05, 0.2) * centre
        limits.append({"of": m, "low": round(centre - wide, 5), "high": round(centre + wide, 5)})
    centre = at["water"] / at["protein"]
    limits.append({"of": "water:protein", "low": round(0.8 * centre, 4), "high": round(1.2 * centre, 4)})
    some = sorted(rng.sample(range(n), 2))
    limits.append({"of": "share", "of_these": some, "low": round(0.6 * sum(shares[i] for i in some), 4)})
    if steps:
        for f in foods[:n]:
            if rng.random() < 0.7:
                f["stepKg"] = rng.choice([0.005, 0.01, 0.05, 0.25])
    goal = ["cost", "fat", "salt"][k % 3]
    return {"foods": foods, "totalKg": total, "limits": limits, "least": goal}


def linear(terms):
    return " ".join(f"{'+' if a >= 0 else '-'} {abs(a)!r} {v}" for v, a in terms) or "0 zero"


def written(p):
    """The programme in CPLEX's text form: `x` in kg, `k` how many steps."""
    foods = p["foods"]
    n = range(len(foods))
    cost = [f["pricePerKg"] if p["least"] == "cost" else f["nutrients"][p["least"]] for f in foods]
    lines = ["Minimize", " goal: " + linear([(f"x{i}", cost[i]) for i in n]), "Subject To"]
    lines.append(" total: " + linear([(f"x{i}", 1) for i in n]) + f" = {p['totalKg']!r}")
    for j, limit in enumerate(p["limits"]):
        for side, sign in (("low", ">="), ("high", "<=")):
            if side not in limit:
                continue
            bound = limit[side]
            if limit["of"] == "water:protein":
                of = [foods[i]["nutrients"]["water"] - bound * foods[i]["nutrients"]["protein"] for i in n]
                right = 0
            elif limit["of"] == "share":
                of = [1 if i in limit["of_these"] else 0 for i in n]
                right = bound * p["totalKg"]
            else:
                of = [foods[i]["nutrients"][limit["of"]] for i in n]
                right = bound * p["totalKg"]
            lines.append(f" l{j}{side}: {linear([(f'x{i}', a) for i, a in enumerate(of) if a])} {sign} {right!r}")
    stepped = [i for i in n if "stepKg" in foods[i]]
    lines += [f" s{i}: x{i} - {foods[i]['stepKg']!r} k{i} = 0" for i in stepped]
    lines.append("Bounds")
    lines += [f" {f['lowKg']!r} <= x{i} <= {f['highKg']!r}" for i, f in enumerate(foods)]
    lines += [f" 0 <= k{i} <= 100000" for i in stepped]
    if stepped:
        lines += ["Generals", " " + " ".join(f"k{i}" for i in stepped)]
    return "\n".join([*lines, "End", ""])


def solved(p, folder):
    text, out = folder / "problem.lp", folder / "answer.txt"
    text.write_text(written(p))
    whole = any("stepKg" in f for f in p["foods"])
    how = ["--mipgap", "0", "--tmlim", "60", "--cuts"] if whole else ["--exact"]
    run = subprocess.run(
        ["glpsol", "--lp", str(text), *how, "--write", str(out)], capture_output=True, text=True, check=True
    )
    said = next(line.split() for line in out.read_text().splitlines() if line.startswith("s "))
    # `s bas rows columns primal dual value` or `s mip rows columns status value`
    status, value = (said[4], said[6]) if said[1] == "bas" else (said[4], said[5])
    if whole and status == "o" or not whole and status == "f":
        return float(value)
    if status == "n" or "NO PRIMAL FEASIBLE" in run.stdout or "NO FEASIBLE" in run.stdout:
        return None
    raise SystemExit(f"GLPK did not decide: {said}")


problems = [problem(k) for k in range(50)]
if sys.argv[1:] == ["--problems"]:
    print("[\n" + ",\n".join(json.dumps(p) for p in problems) + "\n]")
    raise SystemExit
version = subprocess.run(["glpsol", "--version"], capture_output=True, text=True, check=True).stdout
out = {"GLPK version": float(re.search(r"Solver (\d+\.\d+)", version)[1])}
with tempfile.TemporaryDirectory() as name:
    for k, p in enumerate(problems):
        value = solved(p, Path(name))
        out[f"{k} possible"] = 0 if value is None else 1
        if value is not None:
            out[f"{k} value"] = value
print(json.dumps(out, indent=2))
