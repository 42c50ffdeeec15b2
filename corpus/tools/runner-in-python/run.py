"""Puts the corpus to a program in any language: python3 run.py checks.jsonl [filters] -- COMMAND [ARGUMENT ...]

COMMAND is started once. It reads one question a line, {"role": ..., "edition": ..., "input": ...}, and writes one answer a line, in the same order:
null where it does not size such a conductor, or an object with size (and quantity), outcome, or errors, and whatever of sum, assumedSum and
requiredArea it shows. Filters: --role, --edition, --source, --standing, --voice, --id, --assumed none or some. Exit code 0: every answer was met; 1: something was not; 2: the runner was called wrongly, or the program failed.
Plain Python 3, no packages; corpus/README.md has the rules.
"""

import argparse
import collections
import json
import re
import subprocess
import sys
import threading

FIGURES = ("sum", "assumedSum", "requiredArea")


def rank(size):
    """Place of a trade size in their order; None for a text that is none."""
    match = re.fullmatch(r"([0-9]+)(/0)? (AWG|kcmil)", size) if isinstance(size, str) else None
    if match is None:
        return None
    number, aught, unit = int(match[1]), match[2], match[3]
    if unit == "kcmil":
        return None if aught else 1000 + number
    return number if aught else -number


def is_one_conductor(given):
    return "size" in given and given.get("quantity", 1) == 1


def agrees(expected, given):
    """Whether an answer has what is expected, its figures aside."""
    if "error" in expected:
        return expected["error"] in given.get("errors", [])
    if "errors" in given or "thrown" in given:
        return False
    for limit, sign in (("notLargerThan", 1), ("notSmallerThan", -1)):
        if limit in expected:
            size = rank(given.get("size"))
            return is_one_conductor(given) and size is not None and sign * (rank(expected[limit]) - size) >= 0
    shows = "requiredArea" in given
    if not shows and expected.get("outcome") == "area-only":
        return False
    if shows and "requiredArea" in expected and given["requiredArea"] != expected["requiredArea"]:
        return False
    if "size" in expected:
        return is_one_conductor(given) and given["size"] == expected["size"]
    return given.get("outcome") == expected["outcome"]


def judge(check, given, open_readings=False):
    """The verdict of one line, as the runner in TypeScript has it; with open_readings, what another reading gives is met too."""
    if given is None:
        return "unanswered"
    if not isinstance(given, dict):
        return "missed"
    figures = check["figures"] or {}
    wrong = [name for name in FIGURES if name in figures and name in given and given[name] != figures[name]]
    if agrees(check["expected"], given) and not wrong:
        return "met"
    if open_readings and any(agrees(one["expected"], given) for one in check["acceptable"]):
        return "met"
    changed = check["published"] is not None and agrees(check["published"], given)
    return "changed-side" if changed else "missed"


def read(path, wanted):
    with open(path, encoding="utf-8") as lines:
        checks = [json.loads(line) for line in lines if line.strip()]
    assumed = wanted.pop("assumed")
    for name, value in wanted.items():
        known = ", ".join(sorted({check[name] for check in checks})[:30])
        checks = [check for check in checks if value in (None, check[name])]
        if not checks:
            raise RuntimeError(f"no check matches {name} {value}; there are {known}")
    return [check for check in checks if assumed in (None, "some" if check["assumed"] else "none")]


def ask(command, checks):
    """The answers of a program to all questions; what it does not answer is an error of its own."""
    program = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, encoding="utf-8")

    def write():
        try:
            for check in checks:
                question = {name: check[name] for name in ("role", "edition", "input")}
                program.stdin.write(json.dumps(question, ensure_ascii=False) + "\n")
            program.stdin.close()
        except BrokenPipeError:
            pass  # The program ended early; how many answers it gave says the rest.

    writer = threading.Thread(target=write, daemon=True)
    writer.start()
    answers = [json.loads(line) for line in program.stdout if line.strip()]
    code = program.wait()
    if code != 0 or len(answers) != len(checks):
        raise RuntimeError(f"{len(checks)} questions, {len(answers)} answers, exit code {code}")
    return answers


def report(rows):
    by_role = collections.defaultdict(collections.Counter)
    for check, _, verdict in rows:
        by_role[check["role"]][verdict] += 1
        by_role["all"][verdict] += 1
    verdicts = ("met", "missed", "changed-side", "unanswered")
    print(f"{'role':34}" + "".join(f"{verdict:>14}" for verdict in verdicts))
    for role in [*sorted(set(by_role) - {"all"}), "all"]:
        print(f"{role:34}" + "".join(f"{by_role[role][verdict]:14}" for verdict in verdicts))
    for check, given, verdict in rows:
        if verdict in ("missed", "changed-side"):
            print(f"\n{verdict}: {check['id']}, {check['edition']} ({check['role']}, {check['standing']}, {check['voice']})")
            print(f"  asked     {json.dumps(check['input'])}")
            print(f"  expected  {json.dumps(check['expected'])}\n  given     {json.dumps(given)}\n  source    {check['source']}")


def main(arguments):
    if "--" not in arguments:
        print(__doc__, file=sys.stderr)
        return 2
    at = arguments.index("--")
    parser = argparse.ArgumentParser(usage="run.py checks.jsonl [filters] -- COMMAND [ARGUMENT ...]")
    parser.add_argument("checks")
    for name in ("id", "role", "edition", "source", "standing", "voice"):
        parser.add_argument(f"--{name}")
    parser.add_argument("--assumed", choices=("none", "some"))
    parser.add_argument("--open-readings", action="store_true", help="accept what another reading of an open sentence gives")
    wanted = vars(parser.parse_args(arguments[:at]))
    open_readings = wanted.pop("open_readings")
    try:
        checks = read(wanted.pop("checks"), wanted)
        if not checks:
            raise RuntimeError("no check matches all of the filters")
        answers = ask(arguments[at + 1 :], checks)
    except (OSError, ValueError, IndexError, RuntimeError) as error:
        print(f"run.py: {error}", file=sys.stderr)
        return 2
    rows = [(check, given, judge(check, given, open_readings)) for check, given in zip(checks, answers)]
    report(rows)
    return 0 if all(verdict in ("met", "unanswered") for _, _, verdict in rows) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
