#!/usr/bin/env bash
# Makes fonts/NotoSansJP-*.ttf, NotoSansSC-*.ttf and Literata-*.ttf anew from three npm packages. It needs the Debian
# packages python3-fonttools and python3-brotli. Not a part of the build: run it to change the fonts.
set -euo pipefail
fonts="$(cd "$(dirname "${BASH_SOURCE[0]}")/../fonts" && pwd)"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
cd "$work"
# Punctuation, arrows, numbers in circles, signs, kana, ideographs and full-width forms: see
# `eastern` in src/node/fonts.ts.
kept='U+00B7,U+2014,U+2018-201D,U+2025-2026,U+203B,U+2190-2193,U+2460-2473,U+25A0-26FF,U+3000-9FFF,U+F900-FAFF,U+FE30-FE4F,U+FF00-FFEF'
for family in 'jp japanese JP' 'sc chinese-simplified SC'; do
  read -r name subset short <<<"$family"
  npm pack --silent "@fontsource/noto-sans-$name@5.3.0" >/dev/null
  tar xzf "fontsource-noto-sans-$name-5.3.0.tgz"
  for weight in '400 Regular' '700 Bold'; do
    read -r number word <<<"$weight"
    /usr/bin/python3 -m fontTools.subset "package/files/noto-sans-$name-$subset-$number-normal.woff2" \
      --unicodes="$kept" --no-hinting --layout-features='' --notdef-outline \
      --name-IDs='0,1,2,3,4,5,6,13,14' --output-file="$fonts/NotoSans$short-$word.ttf" \
      --drop-tables+=vhea,vmtx,VORG,GSUB,GPOS,GDEF,BASE,DSIG,STAT,meta,gasp
  done
  rm -rf package
done

# Running text: the scripts come apart in that package and are put together again.
npm pack --silent '@fontsource/literata@5.3.0' >/dev/null
tar xzf fontsource-literata-5.3.0.tgz
for weight in '400 Regular' '700 Bold'; do
  read -r number word <<<"$weight"
  parts=()
  for subset in latin latin-ext cyrillic cyrillic-ext greek; do
    /usr/bin/python3 -m fontTools.subset "package/files/literata-$subset-$number-normal.woff2" \
      --unicodes='*' --no-hinting --layout-features='' --notdef-outline \
      --name-IDs='0,1,2,3,4,5,6,13,14' --output-file="$subset-$word.ttf" \
      --drop-tables+=GSUB,GPOS,GDEF,DSIG,STAT,meta,gasp,prep
    parts+=("$subset-$word.ttf")
  done
  /usr/bin/python3 -m fontTools.merge "${parts[@]}" --output-file="$fonts/Literata-$word.ttf"
done
