#!/usr/bin/env bash
# Builds the committed state twice, in two folders of different names, and compares every file: two builds must give the same bytes.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for name in first second/deeper; do
  mkdir -p "$work/$name"
  git archive HEAD | tar -x -C "$work/$name"
  # Copied, and not linked: the names of chunks hold where a package lies, which is within the folder on every machine.
  cp -R "$PWD/node_modules" "$work/$name/node_modules"
  (cd "$work/$name" && npm run --silent build > build.log 2>&1) || { cat "$work/$name/build.log" >&2; exit 1; }
  (cd "$work/$name/dist" && find . -type f -print0 | sort -z | xargs -0 sha256sum) > "$work/${name%%/*}.sums"
done
diff "$work/first.sums" "$work/second.sums" || { echo "two builds differ" >&2; exit 1; }
echo "two builds gave the same $(wc -l < "$work/first.sums") files, together $(sha256sum < "$work/first.sums" | cut -c1-16)"
