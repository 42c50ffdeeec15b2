#!/usr/bin/env bash
# Runs the packed library under every runtime that it is meant for and compares what it gives: npm run proof:runtimes.
# Every runtime is a package of the registry, in a folder of its own. One that cannot be had is said aloud; set RUNTIMES=all to fail on it.
set -euo pipefail
cd "$(dirname "$0")/.."
root=$PWD
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
[ -f dist/index.js ] || npm run --silent build
tarball=$(npm pack --silent --ignore-scripts --pack-destination "$work")
mkdir "$work/user"
cp release/runtimes/*.mjs release/runtimes/*.cjs "$work/user"
cp -r docs/installations "$work/user/installations"
cd "$work/user"
echo '{ "name": "user", "private": true }' > package.json
npm install --silent --no-audit --no-fund --ignore-scripts "$work/$tarball"

case "$(uname -s)-$(uname -m)" in
  Linux-x86_64) node=linux-x64 bun=@oven/bun-linux-x64 deno=@deno/linux-x64-glibc ;;
  Linux-aarch64) node=linux-arm64 bun=@oven/bun-linux-aarch64 deno=@deno/linux-arm64-glibc ;;
  Darwin-arm64) node=darwin-arm64 bun=@oven/bun-darwin-aarch64 deno=@deno/darwin-arm64 ;;
  *) echo "skipped: no runtimes are known for this machine" >&2; exit "$([ "${RUNTIMES:-}" = all ] && echo 1 || echo 0)" ;;
esac

failed=0
expected=
# The name of a run, and its command; the first run says what the others have to give.
try() {
  local name=$1 given
  shift
  if ! given=$("$@" 2> "$work/errors"); then
    printf 'FAILED %s\n' "$name" >&2
    cat "$work/errors" >&2
    failed=1
  elif [ "$given" != "${expected:=$given}" ]; then
    printf 'DIFFERS %s: %s instead of %s\n' "$name" "$given" "$expected" >&2
    failed=1
  else
    printf 'same    %s\n' "$name"
  fi
}

# Installs a package in a folder of its own and prints the path of the program in it.
fetched() {
  local folder=$work/runtimes/$1 package=$2 program=$3
  mkdir -p "$folder"
  if npm install --silent --no-audit --no-fund --ignore-scripts --force --prefix "$folder" "$package" > /dev/null 2>&1; then
    local found
    found=$(find "$folder/node_modules" -type f -name "$program" | head -n 1)
    if [ -n "$found" ]; then
      chmod +x "$found"
      printf '%s' "$found"
      return
    fi
  fi
  printf 'SKIPPED %s: %s cannot be had\n' "$1" "$package" >&2
}

try "this node, $(node --version)" node program.mjs
printf '%s\n' "$expected"
for line in ${NODE_LINES:-20 22 24 latest}; do
  program=$(fetched "node-$line" "node-$node@$line" node)
  [ -n "$program" ] || { missing=1; continue; }
  name="node $("$program" --version)"
  try "$name, import" "$program" program.mjs
  try "$name, require" "$program" program.cjs
  try "$name, frozen intrinsics" "$program" --frozen-intrinsics program.mjs
  permission=--permission
  [ "$line" = 20 ] && permission=--experimental-permission
  try "$name, permission model" "$program" "$permission" --allow-fs-read="$PWD/*" program.mjs
done
program=$(fetched bun "$bun" bun)
if [ -n "$program" ]; then try "bun $("$program" --version)" "$program" program.mjs; else missing=1; fi
program=$(fetched deno "$deno" deno)
if [ -n "$program" ]; then
  try "deno $("$program" eval 'console.log(Deno.version.deno)')" "$program" run --allow-read="$PWD" program.mjs
else
  missing=1
fi
code=0
node chromium.mjs "$root" "$PWD" > "$work/chromium" 2> "$work/chromium-errors" || code=$?
if [ "$code" = 3 ]; then
  echo "SKIPPED chromium: there is none" >&2
  missing=1
elif [ "$code" != 0 ]; then
  printf 'FAILED chromium\n' >&2
  cat "$work/chromium-errors" >&2
  failed=1
else
  try chromium cat "$work/chromium"
fi
cd "$root"
if [ "${RUNTIMES:-}" = all ] && [ -n "${missing:-}" ]; then failed=1; fi
exit "$failed"
