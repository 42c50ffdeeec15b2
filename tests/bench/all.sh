#!/usr/bin/env bash
# Every bench, over the library as it is built, which is what a user runs: npm run bench, or npm run bench -- --write
set -euo pipefail
cd "$(dirname "$0")/../.."
npm run --silent build > /dev/null
# tsx names every function anew as often as it is made, which costs more than many a call: only the benches go through it.
export TSX_TSCONFIG_PATH=tests/bench/tsconfig.json
npx tsx tests/bench/run.ts "$@"
for one in large effects candidates stream; do npx tsx "tests/bench/$one.ts"; done
