// The unheated spaces beside the rooms: at the temperature the sheet gives, at an assumed one, or with all
// that their own heat balance needs.
//
// In balance are an attic, and any space of which the sheet says more than its temperature. A basement of
// which it says nothing is warmed by heater and ducts, which nobody has measured: its temperature is assumed.
#include <algorithm>
#include <cmath>

#include "house/builders.hpp"
#include "units/unit.hpp"
#include "units/write.hpp"

namespace house {
namespace {

// Estimates: a roof of a third's pitch has 1.2 times its floor's area, gables included, and stands 3 m high.
constexpr double roof_to_floor = 1.2;
constexpr units::Length usual_ridge{3.0};
constexpr units::Airflow most_air = 10'000 * units::unit::cfm;

std::string the(Space space) {
    return space == Space::crawl ? "the crawl space" : "the " + std::string(word(space));
}

std::string in_words(units::Length length) { return units::write(length, units::System::us).text(); }

bool says_more_than_its_temperature(const SurveySpace& s) {
    return s.ventilation || s.vented || s.floor_area || s.roof_area || s.outer_area || s.height ||
           s.perimeter || s.above_ground || s.construction || s.roof || s.heat;
}

bool is_underneath(Space space) { return space == Space::crawl || space == Space::basement; }

// One space in balance, being built.
class InBalance {
  public:
    InBalance(Work& work, BufferSpace& into, const SurveySpace& written)
        : work_(work), into_(into), written_(written) {}

    void build() {
        const bool beside = into_.space == Space::garage || into_.space == Space::porch;
        if (!beside) into_.floor_area = floor_area();
        if (is_underneath(into_.space)) stand_in_the_ground();
        if (into_.space == Space::attic || written_.roof || written_.roof_area) add_roof();
        if (written_.outer_area) add_outer(written_.outer_area->value);
        if (beside && into_.outer.empty())
            work_.ledger.blame_missing(written_.place, "how much of " + the(into_.space) + " faces outdoors",
                                       "outer_area = \"600 ft2\"");
        into_.outdoor_air = outdoor_air();
        if (written_.heat) into_.heat = written_.heat->value;
    }

  private:
    // What the described rooms have above or below them of it.
    units::Area facing() const {
        const SurfaceKind kind = into_.space == Space::attic ? SurfaceKind::ceiling : SurfaceKind::floor;
        units::Area sum;
        for (const Room& room : work_.house.rooms)
            for (const Surface& surface : room.surfaces)
                if (surface.kind == kind && surface.beyond == std::variant<Space, RoomId>(into_.space))
                    sum += surface.area;
        return sum;
    }

    units::Area footprint() const {
        units::Area floors;
        for (const Room& room : work_.house.rooms) floors += room.floor_area();
        if (work_.house.other_rooms) floors += work_.house.other_rooms->floor_area;
        return floors / std::max(1, work_.house.storeys);
    }

    units::Area floor_area() {
        const units::Area seen = facing();
        if (!written_.floor_area) {
            const bool whole = work_.house.other_rooms || seen <= units::Area();
            return whole ? std::max(seen, footprint()) : seen;
        }
        constexpr double measuring = 1.02;
        if (seen > measuring * written_.floor_area->value)
            work_.ledger.blame(
                written_.floor_area->place,
                the(into_.space) + " is smaller than what the rooms have next to it",
                "the rooms described have " + units::write(seen, units::System::us).text() + " there");
        return std::max(seen, written_.floor_area->value);
    }

    // Sides 3 to 2, as the box of loads/infiltration.hpp.
    units::Length shortest_width() const { return units::Length(std::sqrt(into_.floor_area.si() / 1.5)); }

    void stand_in_the_ground() {
        const bool basement = into_.space == Space::basement;
        height_ = work_.ledger.or_default(written_.height,
                                          basement ? DefaultId::basement_height : DefaultId::crawl_height,
                                          the(into_.space));
        units::Length above = height_;
        if (written_.above_ground)
            above = written_.above_ground->value;
        else if (basement)
            above = std::min(height_,
                             units::Length(work_.ledger.take(DefaultId::above_ground, the(into_.space))));
        height_ = std::max(height_, above);
        const units::Length perimeter = written_.perimeter ? written_.perimeter->value : 5 * shortest_width();
        const Assembly wall = make(written_.construction, DefaultId::foundation_wall);
        into_.outer.push_back(
            {SurfaceKind::wall, "walls above ground", perimeter * above, Space::outdoors, wall});
        into_.on_the_ground = OnTheGround{
            ground_temperature(work_, the(into_.space)),
            into_.floor_area,
            shortest_width(),
            height_ - above,
            {SurfaceKind::wall, "walls in the ground", perimeter * (height_ - above), Space::outdoors, wall}};
    }

    void add_roof() {
        const units::Area least = into_.floor_area;
        if (!written_.roof_area && into_.space != Space::attic) {
            work_.ledger.blame_missing(written_.place, "the area of the roof of " + the(into_.space),
                                       "roof_area = \"300 ft2\"");
            return;
        }
        if (written_.roof_area && written_.roof_area->value < least)
            work_.ledger.blame(written_.roof_area->place, "the roof of the attic is smaller than its floor",
                               "measure along the slope");
        const units::Area area = written_.roof_area ? written_.roof_area->value : roof_to_floor * least;
        const DefaultId usual = into_.space == Space::attic ? DefaultId::attic_roof : DefaultId::porch_shell;
        into_.outer.push_back(
            {SurfaceKind::ceiling, "roof", area, Space::outdoors, make(written_.roof, usual)});
    }

    void add_outer(units::Area area) {
        into_.outer.push_back({SurfaceKind::wall, "outer walls", area, Space::outdoors,
                               make(written_.construction, DefaultId::porch_shell)});
    }

    Assembly make(const Maybe<std::string>& construction, DefaultId usual) {
        if (construction) return assembly_named(work_, *construction);
        return units::Transmittance(work_.ledger.take(usual, the(into_.space)));
    }

    units::Volume volume() {
        if (into_.space == Space::attic)
            return into_.floor_area * ((written_.height ? written_.height->value : usual_ridge) / 2);
        if (is_underneath(into_.space)) return into_.floor_area * height_;
        if (!written_.floor_area || !written_.height) {
            work_.ledger.blame_missing(
                written_.place, "the size of " + the(into_.space),
                "floor_area = \"400 ft2\" and height = \"9 ft\", or ventilation = \"60 cfm\"");
            return {};
        }
        return written_.floor_area->value * written_.height->value;
    }

    DefaultId usual_ventilation() const {
        switch (into_.space) {
            case Space::attic:
                return DefaultId::attic_ventilation;
            case Space::crawl:
                if (!written_.vented || written_.vented->value) return DefaultId::crawl_ventilation;
                return DefaultId::closed_ventilation;
            case Space::basement:
                return DefaultId::closed_ventilation;
            default:
                return DefaultId::porch_ventilation;
        }
    }

    units::Airflow outdoor_air() {
        // Of an attic of which neither roof nor air is known the roof's row carries the doubt of both: the
        // value of the other stands in, and is no assumption of its own.
        if (!written_.ventilation && into_.space == Space::attic && !written_.roof)
            return units::AirChange(default_row(DefaultId::attic_ventilation).value) * volume();
        if (!written_.ventilation)
            return units::AirChange(work_.ledger.take(usual_ventilation(), the(into_.space))) * volume();
        if (const auto* flow = std::get_if<units::Airflow>(&written_.ventilation->value)) {
            return *flow;
        }
        return std::get<units::AirChange>(written_.ventilation->value) * volume();
    }

    Work& work_;
    BufferSpace& into_;
    const SurveySpace& written_;
    units::Length height_;  // of crawl space or basement
};

// What is wrong by itself, whether anything lies beside the space or not.
void blame_what_cannot_be(Work& work, Space space, const SurveySpace& written) {
    if (written.height && written.above_ground && written.above_ground->value > written.height->value)
        work.ledger.blame(
            Mistake{"the walls of " + the(space) + " stand higher out of the ground than they are",
                    in_words(written.height->value) + " high in all",
                    "above_ground is the part of the height above the ground outside",
                    written.above_ground->place, written.height->place});
    if (written.vented && written.ventilation)
        work.ledger.blame(Mistake{the(space) + " says twice how much air moves through it",
                                  {},
                                  "write one of the two",
                                  written.vented->place,
                                  written.ventilation->place});
    if (written.ventilation)
        if (const auto* flow = std::get_if<units::Airflow>(&written.ventilation->value))
            blame_too_much_air(work.ledger, *flow, written.ventilation->place);
}

DefaultId usual_temperature(Space space) {
    switch (space) {
        case Space::crawl:
            return DefaultId::crawl_warmth;
        case Space::garage:
            return DefaultId::garage_warmth;
        default:
            return DefaultId::porch_warmth;
    }
}

units::Temperature assumed_temperature(Work& work, Space space, const std::string& used_for) {
    const Site& site = work.house.site;
    if (space == Space::basement)
        return units::Temperature(work.ledger.take(DefaultId::basement_temperature, used_for));
    return site.winter_outdoor +
           work.ledger.take(usual_temperature(space), used_for) * (site.winter_indoor - site.winter_outdoor);
}

}  // namespace

void blame_too_much_air(Ledger& ledger, units::Airflow flow, Place place) {
    if (flow > most_air)
        ledger.blame(place, "that is more air than moves through any house",
                     "at most 10,000 cfm is taken; check the unit");
}

void ask_for_space(Work& work, Space space, const std::string& used_for) {
    House& house = work.house;
    if (space == Space::outdoors || space == Space::heated_rooms) return;  // build_site
    const auto written = work.survey.spaces.find(space);
    const bool described = written != work.survey.spaces.end();
    units::Temperature& winter = house.space_winter[static_cast<std::size_t>(space)];
    if (space == Space::ground) {
        winter = ground_temperature(work, used_for);
    } else if (described && written->second.winter) {
        winter = written->second.winter->value;
    } else if (space == Space::attic || (described && says_more_than_its_temperature(written->second))) {
        if (!house.buffer_space(space)) house.buffer_spaces.push_back({space, {}, {}, {}, {}, {}});
    } else {
        winter = assumed_temperature(work, space, used_for);
    }
}

void build_spaces(Work& work) {
    static const SurveySpace nothing_said;
    for (const auto& [space, written] : work.survey.spaces) blame_what_cannot_be(work, space, written);
    for (BufferSpace& space : work.house.buffer_spaces) {
        const auto written = work.survey.spaces.find(space.space);
        InBalance(work, space, written == work.survey.spaces.end() ? nothing_said : written->second).build();
    }
}

}  // namespace house
