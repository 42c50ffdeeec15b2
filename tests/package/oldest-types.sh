#!/usr/bin/env bash
# Compiles what a user writes against the packed tarball with the oldest TypeScript that the package supports; it is fetched, because two
# versions of one compiler do not live side by side in one folder of packages.
set -euo pipefail
cd "$(dirname "$0")/../.."
oldest=5.4.5
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
[ -f dist/index.d.ts ] || npm run --silent build
tarball=$(npm pack --silent --ignore-scripts --pack-destination "$folder")
cp tests/package/face.ts "$folder/face.ts"
cd "$folder"
echo '{ "name": "user", "private": true, "type": "module" }' > package.json
npm install --silent --no-audit --no-fund "./$tarball" "typescript@$oldest"
for module in node16 esnext; do
  resolution=$([ "$module" = esnext ] && echo bundler || echo node16)
  for skip in true false; do
    cat > tsconfig.json <<JSON
{
  "compilerOptions": {
    "strict": true, "noEmit": true, "types": [], "target": "es2022", "lib": ["es2022"],
    "module": "$module", "moduleResolution": "$resolution", "skipLibCheck": $skip
  },
  "files": ["face.ts"]
}
JSON
    npx --no-install tsc -p .
    echo "TypeScript $oldest, $resolution, skipLibCheck $skip: compiles"
  done
done
