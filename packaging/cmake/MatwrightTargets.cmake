# How rooms, programs and tests are declared.

# The moc of Qt 6.4 cannot parse these two headers of libstdc++ 12: it is told that they have been seen already.
set(CMAKE_AUTOMOC_MOC_OPTIONS -D_GLIBCXX_CONCEPTS -D_GLIBCXX_RANGES)

add_library(matwright_options INTERFACE)
target_include_directories(matwright_options INTERFACE ${CMAKE_SOURCE_DIR})
target_compile_options(matwright_options INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor
                                                   -Woverloaded-virtual -Wcast-align)
# Optimising, g++ 12 sees out-of-bounds reads in comparisons of std::tuple that are not there.
target_compile_options(matwright_options INTERFACE $<$<NOT:$<CONFIG:Debug>>:-Wno-array-bounds>)
if(MATWRIGHT_WERROR)
  target_compile_options(matwright_options INTERFACE -Werror)
endif()
if(MATWRIGHT_SANITIZE)
  target_compile_options(matwright_options INTERFACE -fsanitize=${MATWRIGHT_SANITIZE} -fno-omit-frame-pointer)
  target_link_options(matwright_options INTERFACE -fsanitize=${MATWRIGHT_SANITIZE})
endif()

# matwright_room(core_plan SOURCES a.cpp ... DEPENDS core_movement ...)
# A room is a static library, or an interface library when it has headers alone. DEPENDS names rooms (without the
# prefix matwright_); LINKS names other libraries. What a room does not list it cannot include by accident: the
# architecture test holds each #include against the table in tests/architecture/rooms.txt.
function(matwright_room name)
  cmake_parse_arguments(ROOM "QT" "" "SOURCES;DEPENDS;LINKS" ${ARGN})
  list(TRANSFORM ROOM_DEPENDS PREPEND matwright_)
  if(ROOM_SOURCES)
    add_library(matwright_${name} STATIC ${ROOM_SOURCES})
    target_link_libraries(matwright_${name} PUBLIC matwright_options ${ROOM_DEPENDS} ${ROOM_LINKS})
    if(ROOM_QT)
      set_target_properties(matwright_${name} PROPERTIES AUTOMOC ON)
      target_compile_definitions(matwright_${name} PUBLIC QT_NO_KEYWORDS QT_NO_CAST_TO_ASCII
                                                          QT_NO_URL_CAST_FROM_STRING QT_NO_FOREACH)
    endif()
  else()
    add_library(matwright_${name} INTERFACE)
    target_link_libraries(matwright_${name} INTERFACE matwright_options ${ROOM_DEPENDS} ${ROOM_LINKS})
  endif()
endfunction()

# matwright_test(core_plan SOURCES a_test.cpp ... DEPENDS core_plan ... [QT [DISPLAY]] [LABELS ...])
# DISPLAY: with a real display of its own instead of the platform "offscreen".
# One executable `test_<name>`; its cases become separate CTest tests when there is no window, else one test. With
# DISPLAY it runs on a display of its own (real drags, assistive technology) and carries the label `display`.
function(matwright_test name)
  cmake_parse_arguments(TEST "QT;DISPLAY" "" "SOURCES;DEPENDS;LINKS;LABELS" ${ARGN})
  list(TRANSFORM TEST_DEPENDS PREPEND matwright_)
  add_executable(test_${name} ${TEST_SOURCES})
  target_compile_definitions(test_${name} PRIVATE MATWRIGHT_SOURCE_DIR="${CMAKE_SOURCE_DIR}"
                                                  MATWRIGHT_BINARY_DIR="${CMAKE_BINARY_DIR}")
  target_link_libraries(test_${name} PRIVATE matwright_options GTest::gmock ${TEST_DEPENDS} ${TEST_LINKS})
  if(TEST_QT)
    set_target_properties(test_${name} PROPERTIES AUTOMOC ON)
    target_link_libraries(test_${name} PRIVATE matwright_test_qt_main)
    if(TEST_DISPLAY)
      add_test(NAME ${name} COMMAND ${CMAKE_SOURCE_DIR}/tests/system/on_display $<TARGET_FILE:test_${name}>)
      set_tests_properties(${name} PROPERTIES TIMEOUT 300 SKIP_RETURN_CODE 77 RESOURCE_LOCK display)
      list(APPEND TEST_LABELS display)
    else()
      add_test(NAME ${name} COMMAND test_${name})
      set_tests_properties(${name} PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen" TIMEOUT 300)
    endif()
  else()
    target_link_libraries(test_${name} PRIVATE GTest::gmock_main)
    gtest_discover_tests(test_${name} TEST_PREFIX ${name}. DISCOVERY_TIMEOUT 60 PROPERTIES TIMEOUT 300)
  endif()
  if(TEST_LABELS AND TEST_QT)
    set_tests_properties(${name} PROPERTIES LABELS "${TEST_LABELS}")
  endif()
endfunction()
