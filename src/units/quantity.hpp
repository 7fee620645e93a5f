// Quantities that cannot be mixed up.
//
// A Quantity holds one double in SI units and carries its dimension in its type: metre, kilogram, second,
// kelvin (a temperature difference). Adding, comparing or assigning unlike quantities does not compile;
// multiplying and dividing gives the right dimension, and a plain double where no dimension is left, as in
// the quotient of like ones.
//
//     Airflow flow = 120 * unit::cfm;          double in_cfm = flow / unit::cfm;
//     Velocity speed = flow / area;            Pressure drop = rate * length;
//
// A Temperature is a point on a scale, not a difference: two points subtract to a TemperatureDifference and
// never add. Accuracy: that of double arithmetic; conversion factors are exact by definition unless
// units/unit.hpp says otherwise.
#pragma once

#include <cmath>
#include <compare>

namespace units {

template <int L, int M, int T, int K>
struct Dim {};

template <class D>
class Quantity {
  public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double si) : si_(si) {}
    constexpr double si() const { return si_; }
    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return Quantity(-si_); }
    constexpr Quantity& operator+=(Quantity other) { return si_ += other.si_, *this; }
    constexpr Quantity& operator-=(Quantity other) { return si_ -= other.si_, *this; }
    constexpr Quantity& operator*=(double factor) { return si_ *= factor, *this; }

  private:
    double si_ = 0;
};

template <class D>
constexpr Quantity<D> operator+(Quantity<D> a, Quantity<D> b) {
    return Quantity<D>(a.si() + b.si());
}
template <class D>
constexpr Quantity<D> operator-(Quantity<D> a, Quantity<D> b) {
    return Quantity<D>(a.si() - b.si());
}
template <class D>
constexpr Quantity<D> operator*(double factor, Quantity<D> a) {
    return Quantity<D>(factor * a.si());
}
template <class D>
constexpr Quantity<D> operator*(Quantity<D> a, double factor) {
    return factor * a;
}
template <class D>
constexpr Quantity<D> operator/(Quantity<D> a, double divisor) {
    return Quantity<D>(a.si() / divisor);
}
// A plain double when nothing is left of the dimensions.
template <int L, int M, int T, int K>
constexpr auto of_dimension(double si) {
    if constexpr (L == 0 && M == 0 && T == 0 && K == 0) {
        return si;
    } else {
        return Quantity<Dim<L, M, T, K>>(si);
    }
}
template <int L, int M, int T, int K, int L2, int M2, int T2, int K2>
constexpr auto operator*(Quantity<Dim<L, M, T, K>> a, Quantity<Dim<L2, M2, T2, K2>> b) {
    return of_dimension<L + L2, M + M2, T + T2, K + K2>(a.si() * b.si());
}
template <int L, int M, int T, int K, int L2, int M2, int T2, int K2>
constexpr auto operator/(Quantity<Dim<L, M, T, K>> a, Quantity<Dim<L2, M2, T2, K2>> b) {
    return of_dimension<L - L2, M - M2, T - T2, K - K2>(a.si() / b.si());
}
template <int L, int M, int T, int K>
constexpr Quantity<Dim<-L, -M, -T, -K>> operator/(double a, Quantity<Dim<L, M, T, K>> b) {
    return Quantity<Dim<-L, -M, -T, -K>>(a / b.si());
}
template <class D>
constexpr Quantity<D> abs(Quantity<D> a) {
    return a.si() < 0 ? -a : a;
}
template <class D>
bool is_finite(Quantity<D> a) {
    return std::isfinite(a.si());
}

using Length = Quantity<Dim<1, 0, 0, 0>>;
using Area = Quantity<Dim<2, 0, 0, 0>>;
using Volume = Quantity<Dim<3, 0, 0, 0>>;
using Duration = Quantity<Dim<0, 0, 1, 0>>;
using AirChange = Quantity<Dim<0, 0, -1, 0>>;  // 1/s
using Velocity = Quantity<Dim<1, 0, -1, 0>>;
using Airflow = Quantity<Dim<3, 0, -1, 0>>;   // at the local density
using MassFlow = Quantity<Dim<0, 1, -1, 0>>;  // what balances are written in
using Density = Quantity<Dim<-3, 1, 0, 0>>;
using Viscosity = Quantity<Dim<-1, 1, -1, 0>>;  // dynamic, Pa s
using Pressure = Quantity<Dim<-1, 1, -2, 0>>;
using FrictionRate = Quantity<Dim<-2, 1, -2, 0>>;  // Pa/m
using Power = Quantity<Dim<2, 1, -3, 0>>;          // W
using HeatFlux = Quantity<Dim<0, 1, -3, 0>>;       // W/m2
using TemperatureDifference = Quantity<Dim<0, 0, 0, 1>>;
using HeatLossPerKelvin = Quantity<Dim<2, 1, -3, -1>>;  // W/K
using Transmittance = Quantity<Dim<0, 1, -3, -1>>;      // U, W/(m2 K)
using Resistance = Quantity<Dim<0, -1, 3, 1>>;          // R, m2 K/W
using Conductivity = Quantity<Dim<1, 1, -3, -1>>;       // k, W/(m K)
using SpecificHeat = Quantity<Dim<2, 0, -2, -1>>;       // J/(kg K)

// A point on the temperature scale; si() is kelvin.
class Temperature {
  public:
    constexpr Temperature() = default;
    constexpr explicit Temperature(double kelvin) : kelvin_(kelvin) {}
    constexpr double si() const { return kelvin_; }
    constexpr auto operator<=>(const Temperature&) const = default;

  private:
    double kelvin_ = 273.15;
};
constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return TemperatureDifference(a.si() - b.si());
}
constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
    return Temperature(a.si() + d.si());
}
constexpr Temperature operator-(Temperature a, TemperatureDifference d) {
    return Temperature(a.si() - d.si());
}
inline bool is_finite(Temperature a) { return std::isfinite(a.si()); }

}  // namespace units
