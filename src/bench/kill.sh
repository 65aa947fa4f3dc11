#!/bin/sh
# Kills the program at random moments while it prints over an existing packet, and looks whether
# every file in the packet's folder is whole, the old one or the new one, and whether the next run
# clears what was left.
#
#   src/bench/kill.sh [TIMES]      (default 200; run from the project's folder after mvn package)
#
# The two packets differ in their revision. Exit code 0: nothing was ever half.
set -eu

times=${1:-200}
program=$PWD/target/pegbook/bin/pegbook
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM

mkdir "$work/old" "$work/new"
sed 's/"title"/"revision": "OLD", "title"/' input/smallest.json > "$work/old/deck.json"
sed 's/"title"/"revision": "NEW", "title"/' input/smallest.json > "$work/new/deck.json"
for which in old new; do
  "$program" print "$work/$which/deck.json" --output "$work/$which-out" > /dev/null
done
mkdir "$work/out"
cp -r "$work/old-out/deck" "$work/out/deck"

begin=$(date +%s%N)
"$program" print "$work/new/deck.json" --output "$work/timed" > /dev/null
span=$((($(date +%s%N) - begin) / 1000000))

half=0
left=0
changed=0
time=0
while [ "$time" -lt "$times" ]; do
  time=$((time + 1))
  case $((time % 2)) in 0) job=old ;; *) job=new ;; esac
  "$program" print "$work/$job/deck.json" --output "$work/out" > /dev/null 2>&1 &
  process=$!
  chance=$(od -An -N2 -tu2 /dev/urandom | tr -d ' ')
  if [ $((time % 4)) -eq 0 ]; then
    wait_ms=$((chance % span))
  else
    # Three in four while the files are written: that takes some thousandths of a second.
    # The lock names the process that holds it; one that was killed before may have left its own.
    looks=0
    while :; do
      read -r holder _ 2> /dev/null < "$work/out/.deck.new/lock" || true
      if [ "${holder:-}" = "$process" ]; then break; fi
      looks=$((looks + 1))
      if [ $((looks % 50)) -eq 0 ]; then
        case $(ps -o stat= -p "$process") in '' | Z*) break ;; esac
      fi
      sleep 0.001
    done
    wait_ms=$((chance % 12))
  fi
  sleep "$(printf '%d.%03d' $((wait_ms / 1000)) $((wait_ms % 1000)))"
  kill -9 "$process" 2> /dev/null || true
  wait "$process" 2> /dev/null || true
  for file in "$work/out/deck/"*; do
    name=$(basename "$file")
    if cmp -s "$file" "$work/new-out/deck/$name"; then
      changed=$((changed + 1))
    elif ! cmp -s "$file" "$work/old-out/deck/$name"; then
      half=$((half + 1))
      echo "half written after $wait_ms ms: $name" >&2
    fi
  done
  if [ -e "$work/out/.deck.new" ]; then left=$((left + 1)); fi
done
"$program" print "$work/old/deck.json" --output "$work/out" > /dev/null
stray=$(find "$work/out" -mindepth 1 -maxdepth 1 ! -name deck | wc -l)
different=$(diff -r "$work/old-out/deck" "$work/out/deck" | wc -l)
echo "$times kills within $span ms: $half half files, $changed new files seen among the old," \
  "$left times something was left, $stray left after the last run, $different differences to a fresh packet"
[ "$half" -eq 0 ] && [ "$stray" -eq 0 ] && [ "$different" -eq 0 ]
