#!/bin/sh
# Prints over an existing packet on disks of many sizes that are too small for it, and looks whether
# every file in the packet's folder is whole, the old one or the new one, whether the program said
# what is wrong, and whether it left anything beside the packet.
#
#   src/bench/full-disk.sh      (as root, for it mounts small disks in memory; from the project's
#                                folder after mvn package)
#
# Exit code 0: nothing was ever half, and each time the message named the disk's want of room.
set -eu

program=$PWD/target/pegbook/bin/pegbook
work=$(mktemp -d)
mkdir "$work/disk" "$work/old" "$work/new"
trap 'umount "$work/disk" 2> /dev/null || true; rm -rf "$work"' EXIT INT TERM

for which in old new; do
  word=$(echo "$which" | tr a-z A-Z)
  sed "s/\"title\"/\"revision\": \"$word\", \"title\"/" input/smallest.json > "$work/$which/deck.json"
  "$program" print "$work/$which/deck.json" --output "$work/$which-out" > /dev/null
done
packet=$(du -sk "$work/old-out/deck" | cut -f1)

tried=0
half=0
silent=0
left=0
full=0
step=$((packet / 12 + 1))
room=$((packet + 8))
while [ "$room" -lt $((2 * packet + 200)) ]; do
  mount -t tmpfs -o "size=${room}k" tmpfs "$work/disk"
  cp -r "$work/old-out/deck" "$work/disk/deck"
  code=0
  "$program" print "$work/new/deck.json" --output "$work/disk" > "$work/said" 2>&1 || code=$?
  tried=$((tried + 1))
  for file in "$work/disk/deck/"*; do
    name=$(basename "$file")
    cmp -s "$file" "$work/old-out/deck/$name" || cmp -s "$file" "$work/new-out/deck/$name" || {
      half=$((half + 1))
      echo "half written on a disk of $room KiB: $name" >&2
    }
  done
  if [ "$code" -ne 0 ]; then
    full=$((full + 1))
    { [ "$code" -eq 2 ] && grep -q "cannot be written" "$work/said"; } || {
      silent=$((silent + 1))
      echo "exit code $code on a disk of $room KiB:" >&2
      cat "$work/said" >&2
    }
    if [ -n "$(ls -A "$work/disk" | grep -vx deck)" ]; then left=$((left + 1)); fi
  fi
  umount "$work/disk"
  room=$((room + step))
done
echo "$tried disks, $full too small (packet $packet KiB): $half half files, $silent times no clear" \
  "message, $left times something was left beside the packet"
[ "$full" -gt 0 ] && [ "$half" -eq 0 ] && [ "$silent" -eq 0 ] && [ "$left" -eq 0 ]
