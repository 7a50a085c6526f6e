"""The processing of a balance trial with numpy and scipy, for comparing times; exercises/src/sway documents the steps.

A second implementation, vectorised as usual in numpy; filters and windows are created once and reused.

  sway.py check REFERENCE_DIR   compares its results with reference.json, relative error 1e-9; fails if they differ
  sway.py time TRIAL.csv        milliseconds of one analysis of the trial: the median of many, and the fastest
"""
import functools
import json
import pathlib
import statistics
import sys
import time

import numpy as np
from scipy import ndimage, signal

FS, DT, G0 = 100.0, 0.01, 9.80665
CHI2_95 = 5.991464547107979


@functools.cache
def sections(fc):
    return signal.butter(4, fc, fs=FS, output="sos")


def low_pass(fc, x):
    return signal.sosfiltfilt(sections(fc), x, axis=0)


def directions(mean):
    up = mean / np.linalg.norm(mean)
    front = np.array([0.0, 0.0, 1.0]) - up[2] * up
    identified = bool(np.linalg.norm(front) >= 0.5)
    if not identified:
        front = np.array([0.0, 1.0, 0.0]) - up[1] * up
    front = front / np.linalg.norm(front)
    return up, front, np.cross(up, front), identified


def cleaned(t, a):
    finite = np.isfinite(t) & np.isfinite(a).all(axis=1)
    t, a = t[finite], a[finite]
    later = np.ones(len(t), bool)
    later[1:] = t[1:] > np.maximum.accumulate(t)[:-1]
    return t[later], a[later]


def resampled(t, a):
    n = int(np.floor((t[-1] - t[0]) * FS + 1e-6)) + 1
    grid = t[0] + np.arange(n) / FS
    r = np.stack([np.interp(grid, t, a[:, axis]) for axis in range(3)], axis=1)
    bad = np.zeros(n, bool)
    for gap in np.flatnonzero(np.diff(t) > 0.20):
        bad |= (grid > t[gap]) & (grid < t[gap + 1])
    return grid, r, bad


def detect(grid, r, bad, t_on, t_off, taps):
    up, front, side, _ = directions(np.median(r, axis=0))
    wide = low_pass(10.0, r)
    x, y = wide @ side, wide @ front
    jerk = np.gradient(wide @ up, DT)
    swing = ndimage.maximum_filter1d(jerk, 31, mode="nearest") - ndimage.minimum_filter1d(jerk, 31, mode="nearest")
    inside = np.flatnonzero((grid >= t_on + 1.0 - 1e-9) & (grid <= t_off + 1e-9) & ~bad)
    middle = np.median(swing[inside])
    spread = np.median(np.abs(swing[inside] - middle))
    low, high = max(10.0, middle + 6 * 1.4826 * spread), max(20.0, middle + 10 * 1.4826 * spread)
    distance = np.hypot(x - np.median(x[inside]), y - np.median(y[inside]))
    lean = low_pass(1.0, r) @ np.stack([side, front], axis=1)
    n, accepted, events = len(grid), [], []
    above = inside[swing[inside] >= low]
    for k in above[np.argsort(-swing[above], kind="stable")]:
        start = max(0, k - 15)
        at = start + int(np.argmax(np.abs(jerk[start:k + 16])))
        if any(abs(at - other) < 100 for other in accepted):
            continue
        accepted.append(at)
        pre = distance[max(0, at - 100):at + 1].max()
        shift = 0.0
        if at + 40 < n and at > 100:
            before, after = lean[max(0, at - 200):at - 100], lean[at + 30:at + 100]
            shift = np.hypot(*(after.mean(axis=0) - before.mean(axis=0)))
        support = bool(pre > 0.60 or shift > 0.25)
        events.append({"t": float(grid[at]), "p2p": float(swing[k]), "pre": float(pre), "shift": float(shift),
                       "support": support, "tap": None,
                       "cls": "definite" if swing[k] >= high and support else "possible"})
    events.sort(key=lambda event: event["t"])
    unmatched = []
    for tap in sorted(taps):
        near = [event for event in events if tap - 1.5 <= event["t"] <= tap + 0.2]
        if not near:
            unmatched.append(tap)
            continue
        chosen = max(near, key=lambda event: event["p2p"])
        chosen.update(tap=tap, cls="definite")
        for event in events:
            if event is not chosen and event["cls"] == "possible" and abs(event["t"] - tap) <= 0.15:
                event["cls"] = "tap_knock"
    return {"events": events, "unmatched_taps": unmatched, "thr_lo": float(low), "thr_hi": float(high),
            "p2p_median": float(middle), "p2p_mad": float(spread)}


def window_of(grid, bad, t_on, t_end):
    k0 = max(0, int(np.ceil((t_on + 2.0 - grid[0]) * FS - 1e-6)))
    k1 = min(len(grid) - 1, int(np.floor((t_end - 0.5 - grid[0]) * FS + 1e-6)))
    usable = ~ndimage.binary_dilation(bad, iterations=50)
    edges = np.flatnonzero(np.diff(np.concatenate([[0], usable[k0:k1 + 1], [0]])))
    starts, ends = edges[::2], edges[1::2] - 1
    if not len(starts):
        return None
    longest = int(np.argmax(ends - starts))
    return k0 + int(starts[longest]), k0 + int(ends[longest])


def plane(r, k0, k1, axes, fc):
    start, end = max(0, k0 - 50), min(len(r), k1 + 51)
    cut = low_pass(fc, r[start:end])[k0 - start:k1 + 1 - start]
    return signal.detrend(cut @ np.stack(axes, axis=1), axis=0)


def spectrum(power, f, df, name):
    m0, m1, m2 = (float((f**k * power).sum() * df) for k in range(3))
    running = np.cumsum(power) * df

    def reaches(q):
        i = int(np.searchsorted(running, q * m0))
        below = running[i - 1] if i else 0.0
        return float(f[i] - df + df * (q * m0 - below) / (running[i] - below))

    return {"pwr_" + name: m0, "cf_" + name: float(np.sqrt(m2 / m0)), "f50_" + name: reaches(0.5),
            "f95_" + name: reaches(0.95), "fd_" + name: float(np.sqrt(max(0.0, 1 - m1**2 / (m0 * m2))))}


def spectra(wide):
    length = min(len(wide), 1000)
    f, power = signal.welch(wide[:, :2], FS, "hann", length, length // 2, detrend="constant", axis=0)
    band = (f >= 0.15) & (f <= 5.0)
    f, (x, y) = f[band], power[band].T
    df = FS / length
    return {**spectrum(x, f, df, "ml"), **spectrum(y, f, df, "ap"), **spectrum(x + y, f, df, "pl")}


def measures(r, k0, k1):
    up, front, side, identified = directions(r[k0:k1 + 1].mean(axis=0))
    sway = plane(r, k0, k1, (side, front, up), 3.5)
    x, y, v = sway.T
    n = len(x)
    time_s = (n - 1) * DT
    rms = lambda of: float(np.sqrt(np.mean(of**2)))
    change = np.gradient(sway[:, :2], DT, axis=0)
    squared = np.trapz(change**2, dx=DT, axis=0)
    both = float(squared.sum())
    path = float(np.hypot(np.diff(x), np.diff(y)).sum())
    planar = float(np.hypot(rms(x), rms(y)))
    peak = float(np.hypot(x - x.mean(), y - y.mean()).max())
    area = float(np.pi * np.sqrt(max(0.0, np.linalg.det(np.cov(x, y)))))
    f95 = (n - 2) / 2 * (0.05 ** (-2 / (n - 2)) - 1)
    found = {
        "n": n, "duration_s": time_s, "axes_identified": identified, "rms_ml": rms(x), "rms_ap": rms(y), "rms_v": rms(v),
        "rms_planar": planar, "mean_dist": float(np.hypot(x, y).mean()), "range_ml": float(np.ptp(x)),
        "range_ap": float(np.ptp(y)), "path": path, "path_per_s": path / time_s, "jerk": both / 2,
        "jerk_per_s": both / 2 / time_s, "njs_ml": float(np.sqrt(time_s**5 / 2 * squared[0])),
        "njs_ap": float(np.sqrt(time_s**5 / 2 * squared[1])), "ldlj_a": float(-np.log(time_s / peak**2 * both)),
        "jerk_over_rms": float(np.sqrt(both / time_s)) / planar, "ell_chi2": CHI2_95 * area,
        "ell_pred_F": 2 * (n - 1) * (n + 1) / (n * (n - 2)) * f95 * area, "ell_prieto_F": 2 * f95 * area,
    }
    if time_s >= 15.0:
        return found | spectra(plane(r, k0, k1, (side, front, up), 10.0))
    names = [f"{figure}_{axis}" for figure in ("pwr", "cf", "f50", "f95", "fd") for axis in ("ml", "ap", "pl")]
    return found | dict.fromkeys(names)


def quality(t, a, r):
    dt = np.diff(t)
    typical = float(np.median(dt))
    steps = np.abs(np.diff(a, axis=0))
    lsb = float(steps[steps > 1e-4].min())
    same = np.concatenate([[0], (steps == 0).all(axis=1), [0]])
    edges = np.flatnonzero(np.diff(same))
    stall = float((t[edges[1::2]] - t[edges[::2]]).max()) if len(edges) else 0.0
    return {"n_raw": len(t), "fs_est": 1 / typical, "jitter_p95": float(np.percentile(np.abs(dt - typical), 95)) / typical,
            "max_gap_s": float(dt.max()), "missing_frac": float(np.maximum(dt - 1.5 * typical, 0).sum() / (t[-1] - t[0])),
            "lsb": lsb, "coarse": lsb >= 0.05, "g_mean": float(np.linalg.norm(r.mean(axis=0))),
            "max_abs": float(np.abs(a).max()), "stall_s": stall}


def tilt_change_deg(r, k0, k1):
    mean = r[k0:k1 + 1].mean(axis=0)
    slow = low_pass(0.5, r)[k0:k1 + 1]
    return float(np.degrees(np.arctan2(np.linalg.norm(np.cross(slow, mean), axis=1), slow @ mean)).max())


def verdict(found, tilt, window_s):
    flags = [("gap", found["max_gap_s"] > 0.10), ("possible_clipping", found["max_abs"] > 38.0),
             ("phone_moved", tilt > 8.0), ("coarse_quantisation", found["coarse"])]
    reasons = [("rate_too_low", found["fs_est"] < 30.0), ("too_much_missing", found["missing_frac"] > 0.05),
               ("sensor_stalled", found["stall_s"] > 0.50), ("gravity_implausible", abs(found["g_mean"] - G0) > 0.5),
               ("phone_moved", tilt > 15.0), ("window_too_short", window_s < 8.0)]
    return {"flags": [name for name, is_so in flags if is_so], "not_measured": [name for name, is_so in reasons if is_so]}


def analyse(t, a, taps, t_on, t_off):
    t, a = cleaned(t, a)
    grid, r, bad = resampled(t, a)
    found = quality(t, a, r)
    detection = detect(grid, r, bad, t_on, t_off, taps)
    ends = [event["t"] for event in detection["events"] if event["cls"] == "definite"]
    ends += [tap - 0.5 for tap in detection["unmatched_taps"]]
    t_end = min(ends + [t_off])
    k0, k1 = window_of(grid, bad, t_on, t_end)
    tilt = tilt_change_deg(r, k0, k1)
    asked = [event["t"] for event in detection["events"] if event["tap"] is None and event["t"] <= t_end
             and event["cls"] != "tap_knock"]
    return {
        "hold_s": t_end - t_on, "hold_censored": t_end == t_off, "detection": detection,
        "hold_gap": bool(((np.diff(t) > 0.20) & (t[1:] > t_on) & (t[:-1] < t_end)).any()), "ask_patient": asked,
        "quality": found | {"tilt_change_deg": tilt} | verdict(found, tilt, (k1 - k0) * DT),
        "window": {"k0": k0, "k1": k1, "t0": float(grid[k0]), "t1": float(grid[k1])}, "measures": measures(r, k0, k1),
    }


def differences(path, got, want):
    if isinstance(want, dict):
        if sorted(got) != sorted(want):
            yield f"{path}: keys {sorted(set(got) ^ set(want))}"
        for key in set(got) & set(want):
            yield from differences(f"{path}.{key}", got[key], want[key])
    elif isinstance(want, list):
        if len(got) != len(want):
            yield f"{path}: {len(got)} of {len(want)}"
        for place, (one, other) in enumerate(zip(got, want)):
            yield from differences(f"{path}[{place}]", one, other)
    elif isinstance(want, float) and got is not None:
        if abs(got - want) > max(1e-9 * abs(want), 1e-12):
            yield f"{path}: {got} is not {want}"
    elif got != want:
        yield f"{path}: {got} is not {want}"


def trial(path):
    rows = np.loadtxt(path, delimiter=",", skiprows=1)
    return rows[:, 0], rows[:, 1:]


def check(folder):
    reference = json.loads((folder / "reference.json").read_text())["trials"]
    for name, case in reference.items():
        got = analyse(*trial(folder / f"{name}.csv"), case["taps"], case["t_on"], case["t_off"])
        for found in differences(name, got, case["result"]):
            sys.exit(f"the reference in Python differs: {found}")


def milliseconds(path):
    t, a = trial(path)
    spent = []
    until = time.perf_counter() + 4.0
    while time.perf_counter() < until or len(spent) < 20:
        begin = time.perf_counter()
        json.dumps(analyse(t, a, [], 0.0, 60.0))
        spent.append(time.perf_counter() - begin)
    return statistics.median(spent) * 1000, min(spent) * 1000


if __name__ == "__main__":
    what, path = sys.argv[1], pathlib.Path(sys.argv[2])
    if what == "check":
        check(path)
    else:
        print(*milliseconds(path))
