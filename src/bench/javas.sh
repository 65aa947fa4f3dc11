#!/bin/sh
# Prints the examples from the packaged folder with every Java found, 17 or later, and once with no
# class data, and compares what is read back: text and its places, tags, drawings, fields, figures.
#
#   src/bench/javas.sh [JAVA_HOME…]   (default: every one under /usr/lib/jvm; run from the project's
#                                      folder after mvn package; CP is the test class path)
#
# Exit code 0: all alike.
set -eu

[ -n "${CP:-}" ] || { echo "set CP to the test class path (see DEVELOPERS.md)" >&2; exit 2; }
program=$PWD/target/pegbook/bin/pegbook
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM
[ $# -gt 0 ] || set -- /usr/lib/jvm/*

count=0
bad=0
seen=
for home in "$@"; do
  [ -x "$home/bin/java" ] || continue
  version=$("$home/bin/java" -version 2>&1 | sed -n 's/.* version "\([^"]*\)".*/\1/p')
  [ "${version%%.*}" -ge 17 ] 2> /dev/null || continue
  case " $seen " in *" $version "*) continue ;; esac
  seen="$seen $version"
  count=$((count + 1))
  JAVA_HOME=$home "$program" print input --output "$work/$count" > /dev/null
  if [ "$count" -eq 1 ]; then
    echo "Java $version prints first"
    JAVA_HOME=$home PEGBOOK_JAVA_OPTIONS="-Xshare:off" "$program" print input --output "$work/bare" > /dev/null
    echo "  without class data: $(java -cp "$CP" pegbook.testing.SamePackets "$work/1" "$work/bare")" || bad=1
  else
    result=$(java -cp "$CP" pegbook.testing.SamePackets "$work/1" "$work/$count") || bad=1
    echo "Java $version: $result"
  fi
done
[ "$count" -gt 0 ] && [ "$bad" -eq 0 ]
