#!/bin/sh
# Changes the compiled code of calculators and quantities a little, one change at a time, and looks
# whether a test notices. A package at a time, with the tests beside it and the one that works every
# formula from its printed characters.
#
#   src/bench/mutate.sh [PACKAGE…]      (calc.bearing, measure; default all; from the project's folder)
#
# LIMIT=10 tries ten changes a class, spread over it, instead of all. CLASSES='Board* Edge*' changes
# these alone; such parts of a package are counted together. TESTS names tests that run as well, such
# as 'pegbook.packet.HoldsTogetherTest'. What survived stands in target/mutate/PACKAGE/index.html (of
# a part: PACKAGE@CLASSES); the table at the end counts every package that has been run.
# Tests tagged "long" are left out, and properties make 12 tries (testing.FewTries).
set -eu

if [ $# -eq 0 ]; then
  set -- measure $(ls src/main/java/pegbook/calc | grep -v '\.java$' | sed 's/^/calc./')
fi
mkdir -p target/mutate
mvn -q -B -Dquick test-compile
for package in "$@"; do
  classes=
  set -f
  for class in ${CLASSES:-'*'}; do
    classes="${classes:+$classes,}pegbook.$package.$class"
  done
  set +f
  into="$package${CLASSES:+@$(printf %s "$CLASSES" | tr -d '* ')}"
  # A package is counted once: as a whole, or in parts.
  if [ -n "${CLASSES:-}" ]; then
    rm -rf "target/mutate/$package" "target/mutate/$into"
  else
    rm -rf "target/mutate/$package" "target/mutate/$package@"*
  fi
  tests="pegbook.$package.*,pegbook.packet.EveryFormulaTest${TESTS:+,$TESTS}"
  if ! mvn -q -B -Dquick -Pmutate "-Dmutate=$into" "-Dmutate.classes=$classes" "-Dmutate.tests=$tests" \
      ${LIMIT:+"-Dfeatures=+CLASSLIMIT(limit[$LIMIT])"} \
      org.pitest:pitest-maven:mutationCoverage > "target/mutate/$into.log" 2>&1; then
    echo "$package could not be run, see target/mutate/$into.log" >&2
  fi
done

# A change that ends in an endless loop or without memory was noticed too.
awk -F, '
  FNR == 1 { n = split(FILENAME, path, "/"); package = path[n - 1]; sub(/@.*/, "", package) }
  $6 == "NON_VIABLE" { next }
  { all[package]++; sum++ }
  $6 == "NO_COVERAGE" { bare[package]++; bareSum++ }
  $6 != "SURVIVED" && $6 != "NO_COVERAGE" { killed[package]++; killedSum++ }
  END {
    form = "%-24s %6d %6d %6d %5.1f %%\n"
    printf "%-24s %6s %6s %6s %7s\n", "package", "all", "killed", "unrun", "score"
    for (p in all) printf form, p, all[p], killed[p], bare[p], 100 * killed[p] / all[p] | "sort"
    close("sort")
    printf form, "together", sum, killedSum, bareSum, 100 * killedSum / sum
  }' target/mutate/*/mutations.csv
