// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// GRAINWISE_WIDE before a function compiles it a second time for processors with wider vectors, and the
/// program takes the one that suits the machine as it starts. Only for loops over plain doubles: the
/// operations and their order stay as written and none is fused (-ffp-contract=off), so both give the
/// same bits. Left out where a compiler or sanitizer does not know it.
#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__) && defined(__gnu_linux__) && \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define GRAINWISE_WIDE __attribute__((target_clones("avx2", "default")))
#else
#define GRAINWISE_WIDE
#endif

/// GRAINWISE_APART before a loop promises that what it writes is none of what it reads elsewhere: between
/// a dozen pointers a compiler gives up finding that out.
#if defined(__GNUC__) && !defined(__clang__)
#define GRAINWISE_APART _Pragma("GCC ivdep")
#else
#define GRAINWISE_APART
#endif
