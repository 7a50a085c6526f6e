"""Prints the table of tests/bench: table.py CRITERION_DIR OUT_DIR.

Shows the median and the fastest sample of every computation. Goals are judged by the fastest, because on a machine that does
other things as well the median depends on those.
"""
import json
import pathlib
import statistics
import sys


def criterion(folder, name):
    sample = json.loads((folder / name / "new" / "sample.json").read_text())
    each = [time / count / 1e6 for time, count in zip(sample["times"], sample["iters"])]
    return statistics.median(each), min(each)


def line(name, took, against="", ratio="", goal=""):
    median, fastest = (f"{value:9.3f}" for value in took)
    print(f"{name:<34} {median} {fastest}  {against:<18} {ratio:>6}  {goal}")


def said(met):
    return "met" if met else "NOT met"


def main(folder, out):
    native = {name: criterion(folder, name) for name in ("sway", "slots", "review", "page", "fold", "find", "index",
                                                            "arrive", "figures")}
    native["read"] = criterion(folder / "files", "read")
    native["scan"] = criterion(folder / "slow", "scan")
    scipy = tuple(map(float, (out / "scipy.txt").read_text().split()))
    web = {}
    for row in (out / "web-view.txt").read_text().splitlines():
        profile, name, *took = row.split()
        web[profile, name] = tuple(map(float, took))
    print(f"{'':<34} {'median ms':>9} {'best ms':>9}  {'against':<18} {'ratio':>6}  goal")
    line("sway of 60 s, numpy and scipy", scipy)
    faster = scipy[1] / native["sway"][1]
    line("sway of 60 s, native", native["sway"], "numpy and scipy", f"{faster:.1f}",
         f"20 times as fast: {said(faster >= 20)}; under 1 ms: {said(native['sway'][1] < 1)}")
    for name, what in (("page", "review of two years, native"), ("review", "the same, with its summaries")):
        line(what, native[name], goal=f"under 5 ms: {said(native[name][1] < 5)}")
    for (profile, name), took in web.items():
        slower = took[1] / native[name][1]
        goal = f"at most 2 times: {said(slower <= 2)}" if profile == "release" else "as shipped, made small"
        if name == "arrive":
            goal = f"1,000 exercises under 60 ms: {said(took[1] < 60)}"
        if name == "figures":
            goal = f"24 figures within a frame of 16 ms: {said(took[1] < 16)}"
        line(f"{name}, web view, profile {profile}", took, "native", f"{slower:.2f}", goal)
    letters = int((out / "letters.txt").read_text())
    each = {name: tuple(value / letters for value in native[name]) for name in ("find", "scan")}
    faster = each["scan"][1] / each["find"][1]
    line("a letter among 1,000 exercises", each["find"], "scan of all texts", f"{faster:.0f}")
    line("the same, scan of all texts", each["scan"])
    for (profile, name), took in web.items():
        if name == "find":
            letter = tuple(value / letters for value in took)
            line(f"a letter, web view, profile {profile}", letter, goal=f"under 50 ms: {said(letter[1] < 50)}")
    line("index of 1,000 exercises, native", native["index"])
    line("files of 1,000 exercises, native", native["read"], goal=f"under 20 ms: {said(native['read'][1] < 20)}")
    line("the same as the window gets them", native["arrive"], goal=f"under 20 ms: {said(native['arrive'][1] < 20)}")
    line("24 figures, native", native["figures"])
    line("slots of a year, native", native["slots"])
    line("log of two years folded, native", native["fold"])


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
