// SPDX-License-Identifier: GPL-3.0-or-later
// One fuzz target a format (GRAINWISE_FUZZ_FORMAT): any bytes, the property of
// tests/support/reader_property.h.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <vector>

#include "tests/robustness/fuzz/json_mutator.h"
#include "tests/support/reader_property.h"

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace {

/// Sound documents to go on from: most changes of changed documents are refused, and a fuzzer that
/// only ever hears "refused" tests half a reader. All the room is taken beforehand: what an input leaves
/// allocated makes the fuzzer search the whole memory for leaks.
class Sound {
 public:
  Sound() : m_texts(kMost) {
    for (std::string& text : m_texts) text.reserve(kLongest);
  }
  void add(const std::uint8_t* data, std::size_t size) {
    if (size <= kLongest) m_texts[m_added++ % kMost].assign(data, data + size);
  }
  const std::string& pick(unsigned seed, const std::string& otherwise) const {
    return m_added == 0 ? otherwise : m_texts[seed % std::min(m_added, kMost)];
  }

 private:
  static constexpr std::size_t kMost = 256;
  static constexpr std::size_t kLongest = 4096;
  std::vector<std::string> m_texts;
  std::size_t m_added = 0;
};
Sound sound;

/// Processor time that reading, writing and reading back may take, sanitizers and all.
constexpr double kLongest_s = 1.0;

struct Count {
  unsigned long long all = 0;
  unsigned long long accepted = 0;
  double longest_s = 0.0;
  ~Count() {
    std::fprintf(stderr, "%s: %llu inputs, %llu accepted, longest %.3f s\n", GRAINWISE_FUZZ_FORMAT, all,
                 accepted, longest_s);
  }
};
Count count;

double processor_s() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

}  // namespace

/// A third of the changes are of bytes, a third of values, a third of values in a sound document.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t most, unsigned int seed) {
  if (seed % 3 == 0) return LLVMFuzzerMutate(data, size, most);
  const std::string text(reinterpret_cast<const char*>(data), size);
  const std::string from = seed % 3 == 1 ? text : sound.pick(seed / 3, text);
  const std::string changed = grainwise::test::JsonMutator(seed).mutate(from);
  if (changed.size() > most || changed == text) return LLVMFuzzerMutate(data, size, most);
  std::memcpy(data, changed.data(), changed.size());
  return changed.size();
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  bool accepted = false;
  const double begin_s = processor_s();
  std::string fault = grainwise::test::readerFault(
      GRAINWISE_FUZZ_FORMAT, {reinterpret_cast<const char*>(data), size}, &accepted);
  const double took_s = processor_s() - begin_s;
  if (took_s > kLongest_s) fault = "it took " + std::to_string(took_s) + " s";
  ++count.all;
  count.longest_s = std::max(count.longest_s, took_s);
  count.accepted += accepted ? 1 : 0;
  if (accepted) sound.add(data, size);
  if (!fault.empty()) {
    std::fprintf(stderr, "%s: %s\n", GRAINWISE_FUZZ_FORMAT, fault.c_str());
    std::abort();
  }
  return 0;
}
