"""Writes detector.json next to it: touch-down detection by numpy and scipy on changed copies of the three trials.

A second implementation of the detector, written from its description and not from the Rust code. Each case scales the
distance of a trial from a fixed vector, adds knocks along one axis, and moves the marks.
Run once, by hand, with: pip install numpy scipy. The Rust tests read only the committed JSON.
"""
import json
import pathlib
import sys

import numpy as np
import scipy
from scipy import signal

here = pathlib.Path(__file__).parent
FS = 100.0


def low_pass(fc, x):
    return signal.sosfiltfilt(signal.butter(4, fc, fs=FS, output="sos"), x, axis=0)


def changed(case):
    rows = np.loadtxt(here / f"{case['trial']}.csv", delimiter=",", skiprows=1)
    t, a = rows[:, 0], rows[:, 1:]
    about = np.array(case["about"])
    a = about + case["scale"] * (a - about)
    for at, size in case["knocks"]:
        after = np.maximum(t - at, 0.0)
        a[:, case["axis"]] += size * np.exp(-after / 0.08) * np.sin(45.0 * after)
    return t, a


def detect(case):
    t, a = changed(case)
    n = int(np.floor((t[-1] - t[0]) * FS + 1e-6)) + 1
    grid = t[0] + np.arange(n) / FS
    r = np.stack([np.interp(grid, t, a[:, i]) for i in range(3)], axis=1)
    bad = np.zeros(n, bool)
    for start, end in zip(t[:-1], t[1:]):
        if end - start > 0.20:
            bad |= (grid > start) & (grid < end)
    middle = np.median(r, axis=0)
    up = middle / np.linalg.norm(middle)
    front = np.array([0.0, 0.0, 1.0]) - up[2] * up
    front /= np.linalg.norm(front)
    side = np.cross(up, front)
    wide = low_pass(10.0, r)
    x, y = wide @ side, wide @ front
    jerk = np.gradient(wide @ up, 1 / FS)
    around = lambda k: slice(max(0, k - 15), min(n, k + 16))
    swing = np.array([np.ptp(jerk[around(k)]) for k in range(n)])
    inside = np.flatnonzero((grid >= case["t_on"] + 1.0) & (grid <= case["t_off"]) & ~bad)
    m = np.median(swing[inside])
    d = np.median(np.abs(swing[inside] - m))
    low, high = max(10.0, m + 6 * 1.4826 * d), max(20.0, m + 10 * 1.4826 * d)
    distance = np.hypot(x - np.median(x[inside]), y - np.median(y[inside]))
    lean = low_pass(1.0, r) @ np.stack([side, front], axis=1)
    accepted, events = [], []
    for k in sorted(inside[swing[inside] >= low], key=lambda k: -swing[k]):
        window = around(k)
        at = window.start + int(np.argmax(np.abs(jerk[window])))
        if any(abs(at - other) < 100 for other in accepted):
            continue
        accepted.append(at)
        pre = distance[max(0, at - 100): at + 1].max()
        shift = 0.0
        if n - 1 - at >= 40 and at >= 101:
            before, after = lean[max(0, at - 200): at - 100], lean[at + 30: at + 100]
            shift = np.hypot(*(after.mean(axis=0) - before.mean(axis=0)))
        support = bool(pre > 0.60 or shift > 0.25)
        cls = "definite" if swing[k] >= high and support else "possible"
        events.append({"t": float(grid[at]), "p2p": float(swing[k]), "pre": float(pre), "shift": float(shift),
                       "support": support, "cls": cls})
    events.sort(key=lambda event: event["t"])
    return {**case, "thr_lo": float(low), "thr_hi": float(high), "p2p_median": float(m), "p2p_mad": float(d),
            "events": events}


A, B, C = "a_stable_native100", "b_touchdowns_web60", "c_coarse_gap_landscape"
UP = {A: [-0.7, 9.6, -1.8], B: [0.1, 9.6, 1.7], C: [9.8, 0.2, -0.4]}
cases = []
for trial, scale, knocks, on, off in [
    (A, 1.0, [(6.0, 0.5), (12.0, 0.9), (20.0, 2.0), (29.7, 1.5)], 0.0, 30.0),
    (A, 3.0, [(6.0, 0.5), (6.7, 0.9), (8.0, 0.8)], 2.0, 25.0),
    (A, 0.3, [(0.5, 2.0), (1.05, 1.0), (15.0, 0.6)], 0.0, 30.0),
    (B, 1.0, [(5.0, 0.6), (10.0, 1.2)], 0.0, 30.0),
    (B, 0.35, [(9.0, 0.7)], 0.0, 30.0),
    (B, 2.0, [], 3.0, 29.0),
    (C, 1.0, [(6.0, 0.7), (20.95, 2.0), (25.0, 1.0)], 0.0, 30.0),
]:
    axis = 0 if trial == C else 1
    cases.append(detect({"trial": trial, "scale": scale, "about": UP[trial], "axis": axis, "knocks": knocks,
                         "t_on": on, "t_off": off}))
made_with = {"python": sys.version.split()[0], "numpy": np.__version__, "scipy": scipy.__version__}
(here / "detector.json").write_text(json.dumps({"made_with": made_with, "cases": cases}, indent=1) + "\n")
for case in cases:
    print(case["trial"], round(case["thr_lo"], 1), [(round(e["t"], 2), round(e["p2p"], 1), e["cls"]) for e in case["events"]])
