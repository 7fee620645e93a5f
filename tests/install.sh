# Sourced by tests/run.sh and cases/run.sh:  source tests/install.sh build|test
# Installs what is missing on Debian 12, as root or with sudo; says nothing when nothing is. The one list of packages.

install_packages() {
    local packages=(g++ cmake ninja-build ccache libfmt-dev libcli11-dev libtomlplusplus-dev nlohmann-json3-dev
        libboost-dev)
    if [[ -d src/network ]]; then packages+=(libeigen3-dev); fi
    if [[ $1 == test ]]; then
        packages+=(git clang libclang-rt-14-dev libgtest-dev libgmock-dev librapidcheck-dev libbenchmark-dev
            libvalijson-dev)
    fi
    if ! command -v dpkg-query >/dev/null; then
        echo "not a Debian system: install the like of ${packages[*]} yourself" >&2
        return 0
    fi

    # One query knows them all; a package it does not name as installed is missing.
    local installed missing=() package
    installed=$(dpkg-query -W -f '${Package} ${db:Status-Status}\n' "${packages[@]}" 2>/dev/null || true)
    for package in "${packages[@]}"; do
        grep -qxF "$package installed" <<<"$installed" || missing+=("$package")
    done
    if ((${#missing[@]} == 0)); then return 0; fi

    local as_root=(env) log
    if ((EUID != 0)); then as_root=(sudo env); fi
    # The lock is waited for: apt fails at once when another apt holds it.
    local apt=("${as_root[@]}" DEBIAN_FRONTEND=noninteractive apt-get -q -y -o DPkg::Lock::Timeout=300)
    log=$(mktemp)
    echo "installing ${missing[*]}" >&2
    if ! { "${apt[@]}" update && "${apt[@]}" install --no-install-recommends "${missing[@]}"; } \
        </dev/null >"$log" 2>&1; then
        cat "$log" >&2
        rm -f "$log"
        echo "could not install ${missing[*]}" >&2
        return 1
    fi
    rm -f "$log"
}

install_packages "$1"
