#include "command_line/run.hpp"

#include <CLI/CLI.hpp>
#include <optional>

#include "command_line/commands.hpp"
#include "command_line/files.hpp"
#include "units/nearest_word.hpp"

namespace command_line {
namespace {

constexpr const char* purpose =
    "sillflow: how much air a remodelled room needs, and what duct carries it there.\n"
    "Every question is put to one house sheet; `sillflow start house.toml` writes a first one.";

struct Command {
    CLI::App* app;
    int (*act)(const Options&);
};

void add_sheet(CLI::App& app, Options& options) {
    app.add_option("sheet", options.file, "the house sheet")->required()->type_name("FILE");
}

void add_printing(CLI::App& app, Options& options) {
    app.add_flag("--json", options.json, "the answer for programs, always SI");
    app.add_option_function<std::string>(
           "--units",
           [&options](const std::string& word) {
               options.system = word == "si" ? units::System::si : units::System::us;
           },
           "what is printed: us or si")
        ->type_name("us|si")
        ->check([](const std::string& word) {
            return word == "us" || word == "si" ? std::string() : "'" + word + "' is not us or si";
        });
}

void add_depth(CLI::App& app, Options& options) {
    app.add_flag("--show-work", options.show_work, "each step with formula, numbers and source");
    app.add_flag("--all-assumptions", options.all_assumptions, "also the assumptions that hardly matter");
}

// "low wall" as the sheet writes it; the words are few, so a wrong one gets them all.
std::string mount_words() {
    std::string all;
    for (const house::Word<house::Mount>& word : house::words<house::Mount>())
        all += (all.empty() ? "" : ", ") + std::string(word.text);
    return all;
}

std::optional<house::Mount> mount_named(std::string_view text) {
    for (const house::Word<house::Mount>& word : house::words<house::Mount>())
        if (word.text == text) return word.value;
    return std::nullopt;
}

void add_places(CLI::App& app, Options& options) {
    app.add_option("--room", options.room, "the room")->required()->type_name("NAME");
    app.add_option("--window", options.window, "of the windows only this one")->type_name("NAME");
    app.add_option_function<std::string>(
           "--mount", [&options](const std::string& word) { options.mount = mount_named(word); },
           "only these: " + mount_words() + " (a high wall only so)")
        ->type_name("MOUNT")
        ->check([](const std::string& word) {
            return mount_named(word) ? std::string() : "'" + word + "' is not one of " + mount_words();
        });
    app.add_option("--svg", options.svg, "also draw the room with its places into this file")
        ->type_name("FILE");
}

CLI::App* add_fittings(CLI::App& app, Options& options) {
    CLI::App* fittings_app =
        app.add_subcommand("fittings", "the fittings by plain name, with what each loses");
    add_printing(*fittings_app, options);
    const auto add = [&](const char* name, std::optional<std::string>& text, const char* what) {
        fittings_app->add_option(name, text, what);
    };
    add("--size", options.size, "the duct that holds them (usually \"6 in\"; \"3-1/4 x 10 in\")");
    add("--flow", options.flow, "its airflow (usually \"100 cfm\")");
    add("--trunk", options.trunk, "the trunk a takeoff leaves (usually \"8 x 16 in\")");
    add("--trunk-flow", options.trunk_flow, "the trunk's airflow before the takeoff (usually \"700 cfm\")");
    fittings_app->footer("example:\n    sillflow fittings --size \"5 in\" --flow \"60 cfm\"");
    return fittings_app;
}

std::vector<Command> add_commands(CLI::App& app, Options& options) {
    CLI::App* loads_app = app.add_subcommand("loads", "heat loss of every room, and the air each needs");
    add_sheet(*loads_app, options), add_printing(*loads_app, options), add_depth(*loads_app, options);
    loads_app->add_option("--room", options.room, "only this room; the house counts them all")
        ->type_name("NAME");
    loads_app->footer("example:\n    sillflow loads house.toml --units si");

    CLI::App* branch_app =
        app.add_subcommand("branch", "size the new branch: pipe, parts, and whether it will do");
    add_sheet(*branch_app, options), add_printing(*branch_app, options), add_depth(*branch_app, options);
    branch_app->add_option("--outlet", options.outlet, "which supply outlet, where the sheet plans several")
        ->type_name("NAME");
    branch_app
        ->add_option_function<std::string>(
            "--stock",
            [&options](const std::string& word) {
                options.stock = word == "metric" ? ducts::Stock::metric : ducts::Stock::us;
            },
            "sizes the shop has: us (inches) or metric")
        ->type_name("us|metric")
        ->check([](const std::string& word) {
            return word == "us" || word == "metric" ? std::string() : "'" + word + "' is not us or metric";
        });
    branch_app->footer("example:\n    sillflow branch house.toml --show-work");

    CLI::App* trunk_app = app.add_subcommand(
        "trunk", "can ducts, blower and heater take another outlet, and what every other room gives up");
    add_sheet(*trunk_app, options), add_printing(*trunk_app, options), add_depth(*trunk_app, options);
    trunk_app->add_option("--outlet", options.outlet, "which supply outlet, where the sheet plans several")
        ->type_name("NAME");
    trunk_app->footer("example:\n    sillflow trunk house.toml");

    CLI::App* place_app =
        app.add_subcommand("place", "where should the register go; every place in the room side by side");
    add_sheet(*place_app, options), add_printing(*place_app, options), add_depth(*place_app, options);
    add_places(*place_app, options);
    place_app->footer("example:\n    sillflow place house.toml --room bath --svg bath.svg");

    CLI::App* check_app = app.add_subcommand("check", "is the sheet right; what is missing, what is assumed");
    add_sheet(*check_app, options), add_printing(*check_app, options);
    check_app->footer("example:\n    sillflow check house.toml");

    CLI::App* start_app =
        app.add_subcommand("start", "write a first sheet with the few things that must be measured");
    start_app->add_option("sheet", options.file, "the file to write; it must not exist")
        ->required()
        ->type_name("FILE");
    start_app->add_flag("--json", options.json, "what was written, for programs");
    start_app->footer("example:\n    sillflow start house.toml");
    return {{loads_app, loads},
            {branch_app, branch},
            {trunk_app, trunk},
            {place_app, place},
            {check_app, check},
            {start_app, start},
            {add_fittings(app, options), fittings}};
}

int complain(const std::string& what) {
    print_error("sillflow: " + what + "\n");
    return wrong;
}

// The first word is no command: name the nearest one.
std::optional<std::string> unknown_command(int argc, const char* const* argv) {
    static constexpr std::string_view known[] = {"loads", "branch", "trunk",   "place",
                                                 "check", "start",  "fittings"};
    if (argc < 2)
        return "say which question: loads, branch, trunk, place, check, start or fittings (sillflow --help)";
    const std::string_view word = argv[1];
    if (word.substr(0, 1) == "-") return std::nullopt;
    for (const std::string_view command : known)
        if (word == command) return std::nullopt;
    const std::string nearest = units::nearest_word(word, known);
    return "'" + std::string(word) + "' is not a question; " +
           (nearest.empty() ? "ask loads, branch, trunk, place, check, start or fittings"
                            : "did you mean '" + nearest + "'?");
}

int act(CLI::App& app, const std::vector<Command>& commands, const Options& options) {
    for (const Command& command : commands)
        if (command.app->parsed()) return command.act(options);
    print(app.help());
    return wrong;
}

}  // namespace

int run(int argc, const char* const* argv) {
    if (const auto trouble = unknown_command(argc, argv)) return complain(*trouble);
    Options options;
    CLI::App app(purpose, "sillflow");
    app.set_version_flag("--version", "sillflow " SILLFLOW_VERSION);
    app.footer("Estimates for planning. Local codes and licensed practice decide.");
    const std::vector<Command> commands = add_commands(app, options);
    try {
        app.parse(argc, argv);
        return act(app, commands, options);
    } catch (const CLI::CallForHelp&) {
        const auto parsed = app.get_subcommands();
        print(parsed.empty() ? app.help() : parsed.front()->help());
        return yes;
    } catch (const CLI::CallForVersion& version) {
        print(std::string(version.what()) + "\n");
        return yes;
    } catch (const CLI::ParseError& e) {
        return complain(std::string(e.what()) + " (sillflow " + (argc > 1 ? argv[1] : "") + " --help)");
    } catch (const FileTrouble& e) {
        return complain(e.what());
    }
}

}  // namespace command_line
