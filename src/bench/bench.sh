#!/bin/sh
# How fast and how large, in one run, as ratios: times belong to a machine, ratios travel better.
#
#   src/bench/bench.sh [JOBS]      (default 1000 made-up jobs; run from the project's folder after
#                                   mvn package; PARTS="cold warm growth batch" picks some)
#
# Cold is the whole process from the packaged folder, for the binder of the largest example; beside
# it a headless Chromium and WeasyPrint print the same HTML (without its drawings). They are Debian's
# packages and are installed when absent, which needs root. Each is run five times by turns and the
# median taken, of the processor's time (user and system) and of the clock's.
set -eu

jobs=${1:-1000}
parts=${PARTS:-cold warm growth batch}
runs=${RUNS:-5}
home=$PWD/target/pegbook
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM
[ -x "$home/bin/pegbook" ] || { echo "no target/pegbook: run mvn package first" >&2; exit 2; }
[ -d target/test-classes/pegbook/bench ] || { echo "no tests: run mvn test-compile first" >&2; exit 2; }

# As bin/pegbook starts it, with the bench and the maker of jobs behind the program's own jars.
flags="$(sed -n 's/^\(pace\|flags\)="\(.*\)"$/\2/p' "$home/bin/pegbook" | tr '\n' ' ') -XX:SharedArchiveFile=$home/lib/pegbook.jsa"
path=$home/lib/pegbook.jar:target/test-classes
# shellcheck disable=SC2086
bench() { "$java" $flags "-Dpegbook.home=$home" -cp "$path" pegbook.BinderBench "$@"; }

# One line of: what, clock seconds, processor seconds, peak MiB (of the largest process).
measure() {
  name=$1
  shift
  python3 - "$name" "$@" >> "$work/times" <<'PY'
import os, subprocess, sys, time, resource
begin = time.monotonic()
code = subprocess.run(sys.argv[2:], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL).returncode
clock = time.monotonic() - begin
used = resource.getrusage(resource.RUSAGE_CHILDREN)
print(sys.argv[1], clock, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024, code)
PY
}

# The median of a column (2 clock, 3 processor, 4 peak) of what was measured under a name.
median() { awk -v name="$1" -v at="$2" '$1 == name { print $at }' "$work/times" | sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
row() { printf '%-26s %7.2f s clock %7.2f s processor %6.0f MiB\n' "$1" "$(median "$1" 2)" "$(median "$1" 3)" "$(median "$1" 4)"; }
ratio() { awk -v a="$(median "$1" "$3")" -v b="$(median "$2" "$3")" 'BEGIN { printf "%.2f", a / b }'; }

date -u '+%Y-%m-%d'
"$java" -version 2>&1 | head -1

case " $parts " in *" cold "*)
  command -v chromium > /dev/null && command -v weasyprint > /dev/null || {
    apt-get update -q && DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends chromium weasyprint
  } > /dev/null
  bench html input/sky-deck.json "$work/binder.html"
  cat > "$work/binder.sh" <<RUN
exec "$java" $flags "-Dpegbook.home=$home" -cp "$path" pegbook.BinderBench binder input/sky-deck.json "$work/binder.pdf"
RUN
  run=0
  while [ "$run" -lt "$runs" ]; do
    run=$((run + 1))
    measure binder sh "$work/binder.sh"
    measure packet "$home/bin/pegbook" print input/sky-deck.json --output "$work/out"
    measure chromium chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run \
      --disable-background-networking --disable-component-update --disable-sync \
      "--user-data-dir=$work/profile-$run" --no-pdf-header-footer "--print-to-pdf=$work/chromium.pdf" "file://$work/binder.html"
    measure weasyprint weasyprint "$work/binder.html" "$work/weasyprint.pdf"
  done
  for name in binder packet chromium weasyprint; do row "$name"; done
  echo "binder/chromium   clock $(ratio binder chromium 2), processor $(ratio binder chromium 3)"
  echo "binder/weasyprint clock $(ratio binder weasyprint 2), processor $(ratio binder weasyprint 3)"
  echo "failed: $(awk '$5 != 0' "$work/times" | wc -l)" ;;
esac

case " $parts " in *" warm "*)
  mvn -q -B -Pbench dependency:build-classpath "-Dmdep.outputFile=$work/path" \
    -DincludeGroupIds=org.openjdk.jmh,net.sf.jopt-simple,org.apache.commons
  jmh=$(cat "$work/path")
  mkdir "$work/warm"
  command -v "${java}c" > /dev/null || { echo "no compiler beside $java" >&2; exit 2; }
  "${java}c" -nowarn -cp "$path:$jmh" -processorpath "$jmh" -d "$work/warm" src/bench/java/pegbook/WarmBench.java
  # As bin/pegbook starts a long batch.
  batch=$(sed -n 's/^ \{1,\}pace="\(.*\)"$/\1/p' "$home/bin/pegbook")
  # shellcheck disable=SC2086
  "$java" $batch -Djava.awt.headless=true "-Dpegbook.home=$home" -Djob=input/sky-deck.json \
    -cp "$work/warm:$path:$jmh" pegbook.WarmBench > "$work/warm.txt"
  grep '^warm:' "$work/warm.txt" ;;
esac

case " $parts " in *" growth "*)
  for marks in 10 40 160 500; do
    bench marks "$marks" "$work/marks-$marks.json"
    measure "check-$marks" "$home/bin/pegbook" check "$work/marks-$marks.json"
    measure "print-$marks" "$home/bin/pegbook" print "$work/marks-$marks.json" --output "$work/out" --time-limit 3600
    row "check-$marks"
    row "print-$marks"
  done ;;
esac

case " $parts " in *" batch "*)
  bench jobs "$jobs" "$work/jobs"
  for threads in 1 2; do
    measure "threads-$threads" "$home/bin/pegbook" print "$work/jobs" --output "$work/out-$threads" --threads "$threads"
    row "threads-$threads"
  done
  echo "$jobs jobs: one thread takes $(ratio threads-1 threads-2 2) times as long as two" ;;
esac
