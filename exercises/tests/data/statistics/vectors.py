"""Writes vectors.json next to it: statistics of made-up series by scipy, statsmodels and pymannkendall.

Run once, by hand, with: pip install numpy scipy statsmodels pymannkendall
The Rust tests read only the committed JSON.
"""
import itertools
import json
import pathlib
import sys

import numpy as np
import pymannkendall
import scipy
import statsmodels
from scipy import stats
from statsmodels.stats.proportion import proportion_confint

rng = np.random.default_rng(20260301)


def exact_by_listing(y):
    """Two-sided p over all orders of the same values, by listing them (short series only)."""
    score = lambda order: sum(np.sign(order[j] - order[i]) for i in range(len(order)) for j in range(i + 1, len(order)))
    s = abs(score(y))
    orders = [abs(score(order)) >= s for order in itertools.permutations(y)]
    return sum(orders) / len(orders)


def series(n, step, tilt):
    days = np.sort(rng.choice(np.arange(int(n * 1.4) + 1), n, replace=False))
    return days, np.round((20 + tilt * days + rng.normal(0, 3, n)) / step) * step


def trend_case(n, step, tilt):
    x, y = series(n, step, tilt)
    mk = pymannkendall.original_test(y)
    slope, _, low, high = stats.theilslopes(y, x, 0.95, method="separate")
    low90, high90 = stats.theilslopes(y, x, 0.90, method="separate")[2:4]
    case = {
        "days": x.tolist(), "values": y.tolist(), "s": int(mk.s), "variance": float(mk.var_s), "z": float(mk.z),
        "p_normal": float(mk.p), "slope": float(slope), "low": float(low), "high": float(high),
        "low90": float(low90), "high90": float(high90), "intercept": float(np.median(y) - slope * np.median(x)),
        "tau_b": float(stats.kendalltau(x, y).statistic), "median": float(np.median(y)),
        "mad": float(stats.median_abs_deviation(y)), "quartiles": np.percentile(y, [25, 50, 75]).tolist(),
        "p_exact": None,
    }
    if len(set(y.tolist())) == n:
        case["p_exact"] = float(stats.kendalltau(x, y, method="exact").pvalue)
    elif n <= 7:
        case["p_exact"] = exact_by_listing(y.tolist())
    return case


sizes = [(5, 0.1), (6, 1.0), (7, 2.0), (8, 0.01), (10, 0.001), (14, 0.5), (20, 0.0001), (30, 1.0), (45, 1e-6), (60, 1e-6), (61, 0.5), (120, 1.0)]
trends = [trend_case(n, step, tilt) for n, step in sizes for tilt in (0.0, 0.15, -0.4)]
wilson = []
for done, planned in [(0, 1), (1, 1), (3, 8), (7, 7), (25, 90), (140, 155), (999, 1000)]:
    for confidence in (0.80, 0.90, 0.95, 0.99):
        low, high = proportion_confint(done, planned, 1 - confidence, method="wilson")
        wilson.append({"done": done, "planned": planned, "confidence": confidence, "low": float(low), "high": float(high)})
normal = [{"p": p, "z": float(stats.norm.ppf(p))} for p in (1e-300, 1e-12, 1e-4, 0.01, 0.2, 0.5, 0.77, 0.99, 0.9999)]

made_with = {"python": sys.version.split()[0], "numpy": np.__version__, "scipy": scipy.__version__,
             "statsmodels": statsmodels.__version__, "pymannkendall": pymannkendall.__version__}
here = pathlib.Path(__file__).with_name("vectors.json")
body = {"made_with": made_with, "trends": trends, "wilson": wilson, "normal": normal}
here.write_text(json.dumps(body, indent=1) + "\n")
