#!/usr/bin/env python3
"""Runs bondmil stream over many machines with Dask distributed: lines in, lines out, in order, with line numbers that count through.

    dask-scheduler --host 127.0.0.1 --port 8786
    dask-worker tcp://127.0.0.1:8786 --nthreads 1
    python3 stream.py tcp://127.0.0.1:8786 -- bondmil stream < installations.ndjson > schedules.ndjson

Standard input goes to the workers in parts of whole lines; each worker runs the filter over its part. A part of a worker that is lost
is done again by another; a part is written once, when it is whole. bondmil must be installed where the workers run.
"""

import argparse
import collections
import itertools
import subprocess
import sys

from distributed import Client


def filtered(command, first_line, lines):
    """The output of the filter for some lines; runs on a worker."""
    done = subprocess.run(
        [*command, "--first-line", str(first_line)], input=b"".join(lines), capture_output=True
    )
    if done.returncode != 0:
        raise RuntimeError(f"{command[0]} ended with {done.returncode}: {done.stderr.decode()[:1000]}")
    answers = done.stdout.count(b"\n")
    if answers != len(lines):
        raise RuntimeError(f"{len(lines)} lines from line {first_line} on gave {answers}")
    return done.stdout


def parts_of(source, size):
    """Each part with the number of its first line. A last line without a line break counts too."""
    first_line = 1
    while lines := list(itertools.islice(source, size)):
        yield first_line, lines
        first_line += len(lines)


def main():
    usage = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    usage.add_argument("scheduler", help="address of the scheduler, such as tcp://127.0.0.1:8786")
    usage.add_argument("--lines", type=int, default=20_000, help="lines of a part (default: %(default)s)")
    usage.add_argument("--ahead", type=int, default=16, help="parts that are under way at once (default: %(default)s)")
    usage.add_argument("command", nargs="+", help="the filter, behind --")
    asked = usage.parse_args()
    if asked.lines < 1 or asked.ahead < 1:
        usage.error("--lines and --ahead must be 1 or more")
    under_way = collections.deque()
    with Client(asked.scheduler) as client:
        for first_line, lines in parts_of(sys.stdin.buffer, asked.lines):
            # Not pure: the same lines at another place are another part.
            under_way.append(client.submit(filtered, asked.command, first_line, lines, pure=False))
            if len(under_way) >= asked.ahead:
                sys.stdout.buffer.write(under_way.popleft().result())
        while under_way:
            sys.stdout.buffer.write(under_way.popleft().result())
        sys.stdout.buffer.flush()


if __name__ == "__main__":
    main()
