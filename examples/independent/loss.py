"""Water that meat holds and the red that is left, from the published equations.

Run: python3 loss.py > loss.json
"""

import json
from math import exp, log

kept = {}
for C in (20, 52, 60, 65, 70, 80):
    kept[f"held {C}"] = 0.745 - 0.345 / (1 + 30 * exp(-0.25 * (C - 52)))
rate = lambda C: 7.98e43 * exp(-290000 / (8.314 * (C + 273.15)))
for C in (55, 60, 63, 65, 70, 75):
    kept[f"rate {C}"] = rate(C)
for C in (60, 65, 70, 75):
    kept[f"minutes to 93 % at {C}"] = log(1 / 0.07) / rate(C)

print(json.dumps(kept, indent=2))
