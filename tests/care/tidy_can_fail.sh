#!/usr/bin/env bash
# tidy_can_fail.sh SOURCE: the list of .clang-tidy refuses what it is there for.
set -u
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cp "$1/.clang-tidy" "$folder/"
cat >"$folder/bad.cpp" <<'CPP'
#include <string>
#include <vector>
struct Length { Length(double v); };
bool none(const std::vector<std::string>& list) {
  for (const std::string one : list) if (one.size() == 0) return true;
  return list.size() * 0.5 == 1;
}
CPP
said=$(clang-tidy --quiet "$folder/bad.cpp" -- -std=c++20 2>/dev/null) && { echo "bad code passed"; exit 1; }
for check in google-explicit-constructor performance-for-range-copy readability-container-size-empty; do
  case $said in *"$check"*) ;; *) echo "$check finds nothing: $said"; exit 1 ;; esac
done
echo "the list refuses what it is there for"
