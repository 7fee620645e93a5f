// Answers as JSON against the schemas in tests/report/schema, and what a reader may rely on beyond them.
#include "report/json.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <charconv>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include "report/a_place.hpp"
#include "report/houses.hpp"
#include "units/unit.hpp"

namespace {

using namespace report_test;
using nlohmann::json;

json schema_file(const std::string& question) {
    std::ifstream file(SILLFLOW_SOURCE_DIR "/tests/report/schema/" + question + ".json");
    return json::parse(file);
}

bool fits(const json& document, const std::string& question) {
    static std::map<std::string, valijson::Schema> schemas;
    auto [at, is_new] = schemas.try_emplace(question);
    if (is_new) {
        const json text = schema_file(question);
        valijson::SchemaParser().populateSchema(valijson::adapters::NlohmannJsonAdapter(text), at->second);
    }
    valijson::Validator validator;
    return validator.validate(at->second, valijson::adapters::NlohmannJsonAdapter(document), nullptr);
}

json branch(const std::string& sheet) { return json::parse(report::branch_json(branch_of(sheet))); }
json loads(const std::string& sheet) { return json::parse(report::loads_json(loads_of(sheet))); }
json trunk(const std::string& sheet) { return json::parse(report::trunk_json(trunk_of(sheet))); }
json check(const std::string& sheet) { return json::parse(report::check_json(check_of(sheet))); }

TEST(Json, of_every_house_fits_its_schema) {
    for (const NamedSheet& house : sheets()) {
        EXPECT_TRUE(fits(branch(house.sheet), "branch")) << house.name;
        EXPECT_TRUE(fits(loads(house.sheet), "loads")) << house.name;
        EXPECT_TRUE(fits(check(house.sheet), "check")) << house.name;
        EXPECT_TRUE(fits(trunk(house.sheet), "trunk")) << house.name;
    }
}

TEST(Json, of_places_fits_its_schema) {
    const questions::PlaceAnswer answer = bath_places();
    const json document = json::parse(report::place_json(answer));
    EXPECT_TRUE(fits(document, "place"));
    const json& places = document["answer"]["places"];
    ASSERT_EQ(places.size(), answer.places.size());
    EXPECT_EQ(places[document["answer"]["chosen"].get<std::size_t>()]["number"], 1);
    EXPECT_EQ(places[1]["figures"], nullptr);
    EXPECT_EQ(places[1]["stopped_by"], "under the tub");
    questions::PlaceQuestion question;
    question.room = "bath";
    EXPECT_TRUE(
        fits(json::parse(report::place_json(questions::compare_places(survey_of(bath_sheet()), question))),
             "place"));
}

TEST(Json, speaks_of_summer_only_where_there_is_cooling) {
    EXPECT_FALSE(loads(bath_sheet())["answer"]["planned"].contains("summer"));
    const json cooled = loads(cooled_bath_sheet());
    const json& summer = cooled["answer"]["planned"]["summer"];
    EXPECT_EQ(summer["rooms"].size(), 3u);
    EXPECT_EQ(summer["gain_W"], cooled["range"]["gain_house_W"]["value"]);
    EXPECT_EQ(summer["moisture_W"], cooled["range"]["moisture_W"]["value"]);
}

TEST(Json, of_a_wrong_sheet_tells_its_mistakes) {
    questions::CheckAnswer wrong;
    wrong.mistakes = {{"two names", "here", "keep one", {3, 1, 4}, house::Place{2, 1, 4}},
                      {"bytes \xff", "", "", {}, {}}};
    const json document = json::parse(report::check_json(wrong));
    EXPECT_TRUE(fits(document, "check"));
    EXPECT_EQ(document["answer"]["right"], false);
    EXPECT_EQ(document["answer"]["mistakes"][0]["second_place"]["line"], 2);
    EXPECT_EQ(document["answer"]["mistakes"][1]["second_place"], nullptr);
}

TEST(Json, of_the_fittings_lists_every_one_with_its_source) {
    const questions::FittingsAnswer answer = questions::list_fittings({});
    const json document = json::parse(report::fittings_json(answer));
    EXPECT_TRUE(fits(document, "fittings"));
    const json& rows = document["answer"]["fittings"];
    ASSERT_EQ(rows.size(), answer.fittings.size());
    for (const json& row : rows) {
        EXPECT_LE(row["loss_Pa"]["low"], row["loss_Pa"]["value"]) << row["name"];
        EXPECT_LE(row["loss_Pa"]["value"], row["loss_Pa"]["high"]) << row["name"];
    }
    json bad = document;
    bad["answer"]["fittings"][0]["mark"] = "heard";
    EXPECT_FALSE(fits(bad, "fittings"));
}

TEST(Json, of_start_tells_what_was_written) {
    const json document = json::parse(report::start_json("my \"house\".toml"));
    EXPECT_TRUE(fits(document, "start"));
    EXPECT_EQ(document["answer"]["wrote"], "my \"house\".toml");
    EXPECT_FALSE(fits(document, "check"));
}

TEST(Json, that_is_broken_is_refused) {
    const json good = branch(bath_sheet());
    const auto refused = [&](const char* pointer, const json& value) {
        json bad = good;
        bad[json::json_pointer(pointer)] = value;
        return !fits(bad, "branch");
    };
    EXPECT_TRUE(refused("/answer/verdict", "maybe"));
    EXPECT_TRUE(refused("/schema", 2));
    EXPECT_TRUE(refused("/question", "loads"));
    EXPECT_TRUE(refused("/answer/trials", json::array()));
    EXPECT_TRUE(refused("/answer/trials/0/pipe/kind", "oval"));
    EXPECT_TRUE(refused("/answer/on_time/share", 1.5));
    EXPECT_TRUE(refused("/range/needs_m3_s/low", "41 cfm"));
    EXPECT_TRUE(refused("/more", 1));
    for (const char* missing : {"schema", "question", "answer", "range", "assumptions", "cautions"}) {
        json bad = good;
        bad.erase(missing);
        EXPECT_FALSE(fits(bad, "branch")) << missing;
    }
    json bad = loads(bath_sheet());
    bad["answer"].erase("planned");
    EXPECT_FALSE(fits(bad, "loads"));
    EXPECT_FALSE(fits(good, "check"));
}

TEST(Json, says_what_the_answer_says) {
    const auto answer = branch_of(bath_sheet());
    const json document = branch(bath_sheet());
    const questions::BranchTrial& choice = answer.sizing.choice();
    const json& chosen = document["answer"]["trials"][answer.sizing.chosen];
    EXPECT_NEAR(chosen["needs_m3_s"], choice.needs->airflow.si(), 1e-9);
    EXPECT_NEAR(chosen["reaches_C"], units::unit::in_celsius(choice.reaches), 1e-6);
    EXPECT_NEAR(document["answer"]["friction_rate"]["friction_rate_Pa_m"], answer.sizing.budget.rate.si(),
                1e-8);
    EXPECT_LE(document["range"]["needs_m3_s"]["low"], document["range"]["needs_m3_s"]["high"]);
    EXPECT_EQ(document["assumptions"].size(), answer.weighed.weights.size());
}

// The nearest number of nine significant digits. (The writer's shortest spelling of it is now and then not
// the shortest there is: the number counts, not its spelling.)
double to_nine_digits(double value) {
    double rounded = 0;
    const std::string text = fmt::format("{:.9g}", value);
    std::from_chars(text.data(), text.data() + text.size(), rounded);
    return rounded;
}

TEST(Json, writes_no_more_than_nine_digits) {
    for (const std::string& text :
         {report::branch_json(branch_of(bath_sheet())), report::loads_json(loads_of(bath_sheet()))}) {
        const json all = json::parse(text, [](int, json::parse_event_t event, json& value) {
            if (event == json::parse_event_t::value && value.is_number_float()) {
                EXPECT_EQ(value.get<double>(), to_nine_digits(value.get<double>()));
            }
            return true;
        });
        EXPECT_FALSE(all.empty());
    }
}

TEST(Json, is_the_same_bytes_every_time) {
    for (const NamedSheet& house : sheets()) {
        EXPECT_EQ(report::branch_json(branch_of(house.sheet)), report::branch_json(branch_of(house.sheet)));
        EXPECT_EQ(report::loads_json(loads_of(house.sheet)), report::loads_json(loads_of(house.sheet)));
    }
}

TEST(Json, keeps_its_keys_in_order) {
    const std::string text = report::loads_json(loads_of(bath_sheet()));
    std::size_t last = 0;
    for (const char* key : {"\n  \"schema\"", "\n  \"question\"", "\n  \"answer\"", "\n  \"range\"",
                            "\n  \"assumptions\"", "\n  \"cautions\""}) {
        const std::size_t at = text.find(key);
        ASSERT_NE(at, std::string::npos) << key;
        EXPECT_GE(at, last);
        last = at;
    }
}

}  // namespace
