# SPDX-FileCopyrightText: The Plateau developers
# SPDX-License-Identifier: GPL-3.0-only

# Several sources compiled as one: the whole is built in half the time, a changed line takes longer. The scripts turn it on, who
# works on the sources leaves it off. Names in anonymous namespaces are therefore unique in a room; what merely shadows such a
# name of another file is not warned of then.
option(PLATEAU_UNITY "Compile several sources of a room at a time" OFF)

# One interface target carries standard, warnings and Qt defines; nothing is set globally.
add_library(plateau_common INTERFACE)
add_library(Plateau::Common ALIAS plateau_common)
target_compile_features(plateau_common INTERFACE cxx_std_20)
target_compile_options(plateau_common INTERFACE
    -Wall -Wextra -Wpedantic -Werror $<$<NOT:$<BOOL:${PLATEAU_UNITY}>>:-Wshadow> -Wconversion -Wno-sign-conversion -Wnon-virtual-dtor
    # A stored run evaluated again must give the same bits, whatever the optimiser would like to fuse.
    -ffp-contract=off)
target_compile_definitions(plateau_common INTERFACE
    QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_CAST_FROM_BYTEARRAY QT_NO_URL_CAST_FROM_STRING
    QT_NO_NARROWING_CONVERSIONS_IN_CONNECT QT_NO_FOREACH QT_NO_KEYWORDS QT_DISABLE_DEPRECATED_BEFORE=0x060400)
target_include_directories(plateau_common INTERFACE ${PROJECT_SOURCE_DIR})
if(PLATEAU_FUZZ)
  if(NOT CMAKE_CXX_COMPILER_ID MATCHES "Clang")
    message(FATAL_ERROR "PLATEAU_FUZZ needs clang++")
  endif()
  target_compile_options(plateau_common INTERFACE
      -fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(plateau_common INTERFACE -fsanitize=address,undefined)
endif()
if(PLATEAU_SANITIZE STREQUAL "thread")
  target_compile_options(plateau_common INTERFACE -fsanitize=thread -fno-omit-frame-pointer)
  target_link_options(plateau_common INTERFACE -fsanitize=thread)
elseif(PLATEAU_SANITIZE)
  target_compile_options(plateau_common INTERFACE
      -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(plateau_common INTERFACE -fsanitize=address,undefined)
endif()

# Tests are compiled much more often than they run long: they are not optimised, only what they test is.
add_library(plateau_test_options INTERFACE)
target_compile_options(plateau_test_options INTERFACE -O0
    # A source that is compiled with others is taken for a header by this warning, which finds every fixture in an anonymous
    # namespace there.
    $<$<AND:$<BOOL:${PLATEAU_UNITY}>,$<CXX_COMPILER_ID:GNU>>:-Wno-subobject-linkage>)

# The older linker takes several times as long over the many test programs.
include(CheckLinkerFlag)
check_linker_flag(CXX -fuse-ld=gold PLATEAU_HAS_GOLD)
if(PLATEAU_HAS_GOLD)
  target_link_options(plateau_common INTERFACE -fuse-ld=gold)
endif()

# plateau_precompiled(TARGET HEADER OWNER): the target reads cmake/precompiled/HEADER compiled. The first target, the
# owner, compiles it; the others of the same compiler options share it.
function(plateau_precompiled target header owner)
  if(target STREQUAL owner)
    target_precompile_headers(${target} PRIVATE ${PROJECT_SOURCE_DIR}/cmake/precompiled/${header})
  else()
    target_precompile_headers(${target} REUSE_FROM ${owner})
  endif()
endfunction()

# plateau_batches(TARGET NUMBER): with PLATEAU_UNITY so many of the target's sources are compiled as one.
function(plateau_batches target number)
  set_target_properties(${target} PROPERTIES UNITY_BUILD ${PLATEAU_UNITY} UNITY_BUILD_BATCH_SIZE ${number})
endfunction()

# plateau_library(NAME sources... LINK libraries...): a static library with its alias.
function(plateau_library name)
  cmake_parse_arguments(arg "" "" "SOURCES;LINK" ${ARGN})
  add_library(plateau_${name} STATIC ${arg_SOURCES})
  if(name STREQUAL "ui")
    plateau_precompiled(plateau_ui widgets.h plateau_ui)
  else()
    plateau_precompiled(plateau_${name} core.h plateau_assay)
  endif()
  plateau_batches(plateau_${name} 10)
  target_link_libraries(plateau_${name} PUBLIC Plateau::Common ${arg_LINK})
  add_library(Plateau::${name} ALIAS plateau_${name})
endfunction()

# plateau_moc(TARGET): the target's headers with Q_OBJECT go through moc, each by itself.
file(GENERATE OUTPUT ${PROJECT_BINARY_DIR}/mocalone INPUT ${PROJECT_SOURCE_DIR}/cmake/mocalone.sh.in
     FILE_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
function(plateau_moc target)
  set_target_properties(${target} PROPERTIES AUTOMOC ON AUTOMOC_EXECUTABLE ${PROJECT_BINARY_DIR}/mocalone)
endfunction()
