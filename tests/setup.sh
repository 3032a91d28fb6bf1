# What the build and the tests need of the system: says what is missing and installs it.
#
# Read by examples/run and tests/run (". tests/setup.sh"). On a Debian system the missing packages
# are installed without asking, as root or through sudo; elsewhere they are only named.

# name | group | how to see that it is there (a command, or a file under /usr/include)
requirements='
g++                 build  command:c++
cmake               build  command:cmake
ninja-build         build  command:ninja
libboost-dev        build  include:boost/multiprecision/cpp_int.hpp
nlohmann-json3-dev  build  include:nlohmann/json.hpp
libfmt-dev          build  include:fmt/format.h
libcli11-dev        build  include:CLI/CLI.hpp
libcpp-httplib-dev  build  include:httplib.h
pkg-config          build  command:pkg-config
libxlsxwriter-dev   build  include:xlsxwriter.h
zlib1g-dev          build  include:zlib.h
libpugixml-dev      build  include:pugixml.hpp
liblzma-dev         build  include:lzma.h
catch2              tests  include:catch2
python3             tests  command:python3
libbenchmark-dev    bench  include:benchmark/benchmark.h
wrk                 bench  command:wrk
libquantlib0-dev    bench  include:ql/quantlib.hpp
clang               fuzz   command:clang++
libclang-rt-14-dev  fuzz   libfuzzer:clang++
clang-tidy          deep   command:clang-tidy
ccache              cache  command:ccache
gnumeric            tests  command:ssconvert
python3-jsonschema  tests  python:jsonschema
chromium-headless-shell  tests  command:chromium-headless-shell
firefox-esr         tests  command:firefox-esr
poppler-utils       tests  command:pdftotext
diction             tests  command:style
emscripten          module command:em++
nodejs              page   command:node
npm                 page   command:npm
'

# cmake/compiler.cmake uses ccache where it finds it. On a bare machine it would gain nothing, so it
# is installed only where somebody keeps its folder from run to run, and says so in CCACHE_DIR. One
# header is precompiled for all tests, and a checkout may lie elsewhere the next time.
cache=${CCACHE_DIR:+cache}
export CCACHE_SLOPPINESS="${CCACHE_SLOPPINESS:-pch_defines,time_macros}"
export CCACHE_BASEDIR="${CCACHE_BASEDIR:-$PWD}" CCACHE_NOHASHDIR=1

# present KIND:WHAT
present() {
    case $1 in
    command:*) command -v "${1#*:}" >/dev/null 2>&1 ;;
    include:*) [ -e "/usr/include/${1#*:}" ] || [ -e "/usr/local/include/${1#*:}" ] ;;
    libfuzzer:*) echo 'extern "C" int LLVMFuzzerTestOneInput(const char*, long) { return 0; }' |
        "${1#*:}" -fsanitize=fuzzer -x c++ - -o /dev/null >/dev/null 2>&1 ;;
    python:*) python3 -c "import ${1#*:}" >/dev/null 2>&1 ;;
    esac
}

# as_root COMMAND...
as_root() {
    if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# need GROUP...: installs what these groups lack; fails if it could not.
need() {
    missing=
    while read -r package group sign; do
        case " $* " in *" ${group:-none} "*) present "$sign" || missing="$missing $package" ;; esac
    done <<END
$requirements
END
    [ -n "$missing" ] || return 0
    echo "missing:$missing"
    if ! command -v apt-get >/dev/null 2>&1; then
        echo "This is no Debian system: please install these, under the names they have here."
        return 1
    fi
    if [ "$(id -u)" -ne 0 ] && ! command -v sudo >/dev/null 2>&1; then
        echo "Please install them as root: apt-get install$missing"
        return 1
    fi
    # Always with fresh lists: a small system has none, an old one names versions that are gone.
    # shellcheck disable=SC2086  # a list of names
    quietly package-lists "package lists" as_root apt-get -q update &&
        quietly packages "packages" as_root env DEBIAN_FRONTEND=noninteractive \
            apt-get -q install -y --no-install-recommends -o DPkg::Lock::Timeout=300 $missing
}

# quietly LOG TITLE COMMAND...: one line on the screen, the rest in build/LOG.log; on failure its tail.
quietly() {
    log=build/$1.log title=$2
    shift 2
    mkdir -p build
    began=$(date +%s)
    if "$@" >"$log" 2>&1; then
        echo "$title: $(($(date +%s) - began)) s"
    else
        status=$?
        echo "$title: failed (exit $status); the end of $log:"
        grep -vE '^\[[0-9]+/[0-9]+\] ' "$log" | cut -c 1-180 | tail -n 40
        return "$status"
    fi
}

# configure PRESET: makes build/PRESET ready; ninja itself notices every later change but this one.
configure() {
    # The page is asked for, and so is the engine for browsers where it can be built: a tree
    # configured before npm or emscripten was there would go on without it.
    module=OFF
    if present command:em++; then module=ON; fi
    if [ ! -e "build/$1/build.ninja" ] || [ CMakePresets.json -nt "build/$1/build.ninja" ] ||
        ! grep -q "QUOIN_PAGE:BOOL=ON" "build/$1/CMakeCache.txt" ||
        ! grep -q "QUOIN_BROWSER_MODULE:BOOL=$module" "build/$1/CMakeCache.txt"; then
        quietly "configure-$1" "configure" cmake --preset "$1" -D QUOIN_PAGE=ON \
            -D QUOIN_BROWSER_MODULE="$module"
    fi
}
