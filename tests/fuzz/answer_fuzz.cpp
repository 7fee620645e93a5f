// Feeds any bytes through reading, checking and answering: whatever the sheet says, every figure of an answer
// is finite, its range in order, and the only exception is the one that says there is no answer.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "house/cannot_answer.hpp"
#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/answer_place.hpp"
#include "questions/answer_trunk.hpp"
#include "questions/check_sheet.hpp"
#include "sheet/read.hpp"

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

void check(const questions::Weighed& weighed) {
    for (const questions::Range& range : weighed.ranges) {
        require(std::isfinite(range.low) && std::isfinite(range.value) && std::isfinite(range.high));
        require(range.low <= range.value && range.value <= range.high);
    }
}

// The whole system is solved some thousand times for one answer: too slow for every input.
bool is_one_in_many(std::string_view text) {
    std::uint32_t hash = 2166136261u;  // FNV-1a
    for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
    return hash % 256 == 0;
}

void answer(const house::Survey& survey, bool whole_system) {
    try {
        const questions::LoadsAnswer loads = questions::answer_loads(survey);
        require(std::isfinite(loads.planned.loss.total.si()) && std::isfinite(loads.planned.on_time.share));
        check(loads.weighed);
        if (!whole_system) return;
        const questions::BranchAnswer branch = questions::answer_branch(survey);
        require(std::isfinite(branch.sizing.budget.rate.si()));
        for (const questions::BranchTrial& trial : branch.sizing.trials)
            require(std::isfinite(trial.gives.si()) && std::isfinite(trial.reaches.si()) &&
                    std::isfinite(trial.arrives.si()));
        check(branch.weighed);
        const questions::TrunkAnswer trunk = questions::answer_trunk(survey);
        require(trunk.after.point.residual < 1e-9);
        for (const questions::RoomShare& share : trunk.rooms)
            require(std::isfinite(share.after.si()) && std::isfinite(share.reached_after.si()));
        check(trunk.weighed);
    } catch (const house::CannotAnswer&) {
    }
}

void check(const questions::PlaceFigures& figures) {
    require(std::isfinite(figures.trial.gives.si()) && std::isfinite(figures.run.si()) &&
            std::isfinite(figures.warm.throw_length.si()));
    if (figures.cooled) require(std::isfinite(figures.cooled->gives.si()));
    if (const auto& stack = figures.in_cold_wall)
        require(std::isfinite(stack->at_rest.si()) && std::isfinite(stack->loses.si()) &&
                stack->sweats_above >= 0 && stack->sweats_above <= 1);
}

void place(const house::Survey& survey, const std::string& room) {
    try {
        const questions::PlaceAnswer answer = questions::compare_places(survey, {room, {}, {}});
        for (const questions::FallingAir& air : answer.falling)
            require(std::isfinite(air.speed.si()) && air.dissatisfied >= 0 && air.dissatisfied <= 1);
        for (const questions::Place& one : answer.places)
            if (one.figures) check(*one.figures);
        require(!answer.chosen || answer.choice().ruled_out == questions::RuledOut::no);
    } catch (const house::CannotAnswer&) {
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    sheet::Read read = sheet::read(text);
    const questions::CheckAnswer check = questions::check_sheet(read.survey, read.mistakes);
    require(check.mistakes.size() >= read.mistakes.size());
    for (const house::Mistake& mistake : check.mistakes) require(!mistake.text.empty());
    if (!check.mistakes.empty()) return 0;
    const bool whole_system = is_one_in_many(text);
    answer(read.survey, whole_system);
    for (const house::SurveyRoom& room : read.survey.rooms)
        if (whole_system && room.name) place(read.survey, room.name->value);
    return 0;
}
