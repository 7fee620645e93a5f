#include "command_line/commands.hpp"

#include "command_line/files.hpp"
#include "command_line/least_sheet.hpp"
#include "command_line/terminal.hpp"
#include "house/cannot_answer.hpp"
#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/answer_place.hpp"
#include "questions/answer_trunk.hpp"
#include "questions/check_sheet.hpp"
#include "questions/list_fittings.hpp"
#include "report/drawings.hpp"
#include "report/json.hpp"
#include "report/pages.hpp"
#include "report/steps.hpp"
#include "report/text.hpp"
#include "sheet/read.hpp"
#include "sheet/shape_text.hpp"

namespace command_line {
namespace {

struct Sheet {
    std::string text;
    house::Survey survey;
    questions::CheckAnswer check;
};

Sheet read_sheet(const std::string& file) {
    Sheet sheet;
    sheet.text = read_file(file);
    sheet::Read read = sheet::read(sheet.text);
    sheet.survey = std::move(read.survey);
    sheet.check = questions::check_sheet(sheet.survey, std::move(read.mistakes));
    return sheet;
}

int print_mistakes(const Options& options, const Sheet& sheet) {
    if (options.json)
        print(report::check_json(sheet.check));
    else
        print_error(report::mistakes_text(options.file, sheet.text, sheet.check.mistakes, paper_of_errors()));
    return wrong;
}

std::string at(const Options& options, house::Place place) {
    if (place.line == 0) return options.file;
    return options.file + ":" + std::to_string(place.line) + ":" + std::to_string(place.column);
}

report::PageOptions page_options(const Options& options) { return {options.system, options.all_assumptions}; }

void print_page(const report::Page& page) { print(report::text(page, paper_of_output())); }

// Why there is no answer: for people on the error output, for programs as a document like any other.
int print_no_answer(const Options& options, const house::CannotAnswer& trouble, const std::string& said,
                    int status) {
    if (options.json)
        print(report::no_answer_json(trouble.what(), trouble.place()));
    else
        print_error(at(options, trouble.place()) + ": " + said + trouble.what() + "\n");
    return status;
}

// Reads and checks the sheet, then lets `answer` print its answer; turns "no answer" into its exit status.
template <class Answer>
int with_sheet(const Options& options, Answer answer) {
    const Sheet sheet = read_sheet(options.file);
    if (!sheet.check.mistakes.empty()) return print_mistakes(options, sheet);
    try {
        return answer(sheet);
    } catch (const house::AskedWrongly& e) {
        return print_no_answer(options, e, "", wrong);
    } catch (const house::CannotAnswer& e) {
        return print_no_answer(options, e, "no answer was found: ", no_solution);
    }
}

// An option's quantity, where it is given; throws AskedWrongly with the reader's own words.
template <class Q>
void take(Q& quantity, const std::optional<std::string>& text, const char* option,
          units::Reading<Q> (*read)(std::string_view)) {
    if (!text) return;
    const units::Reading<Q> reading = read(*text);
    if (const auto* problem = std::get_if<units::ReadProblem>(&reading))
        throw house::AskedWrongly({}, std::string(option) + ": " + problem->text + "; " + problem->remedy);
    quantity = std::get<Q>(reading);
}

questions::FittingsQuestion fittings_question(const Options& options) {
    questions::FittingsQuestion question;
    take(question.duct, options.size, "--size", sheet::read_shape_text);
    take(question.flow, options.flow, "--flow", units::read_airflow);
    take(question.trunk, options.trunk, "--trunk", sheet::read_shape_text);
    take(question.trunk_flow, options.trunk_flow, "--trunk-flow", units::read_airflow);
    return question;
}

}  // namespace

int branch(const Options& options) {
    return with_sheet(options, [&](const Sheet& sheet) {
        const questions::BranchAnswer answer =
            questions::answer_branch(sheet.survey, options.outlet, options.stock);
        if (options.json) {
            print(report::branch_json(answer));
        } else {
            print_page(report::branch_page(answer, page_options(options)));
            if (options.show_work)
                print(report::steps_text(report::branch_steps(answer, options.system), paper_of_output()));
        }
        return questions::holds(answer.verdict) ? yes : no;
    });
}

int trunk(const Options& options) {
    return with_sheet(options, [&](const Sheet& sheet) {
        const questions::TrunkAnswer answer = questions::answer_trunk(sheet.survey, options.outlet);
        if (options.json) {
            print(report::trunk_json(answer));
        } else {
            print_page(report::trunk_page(answer, page_options(options)));
            if (options.show_work)
                print(report::steps_text(report::trunk_steps(answer, options.system), paper_of_output()));
        }
        return questions::holds(answer.verdict) ? yes : no;
    });
}

int place(const Options& options) {
    return with_sheet(options, [&](const Sheet& sheet) {
        const questions::PlaceAnswer answer =
            questions::answer_place(sheet.survey, {options.room, options.window, options.mount});
        if (!options.svg.empty()) write_file(options.svg, report::place_svg(answer, options.system));
        if (options.json) {
            print(report::place_json(answer));
        } else {
            print_page(report::place_page(answer, page_options(options)));
            if (options.show_work)
                print(report::steps_text(report::place_steps(answer, options.system), paper_of_output()));
        }
        return answer.chosen ? yes : no;
    });
}

int loads(const Options& options) {
    return with_sheet(options, [&](const Sheet& sheet) {
        const questions::LoadsAnswer answer = questions::answer_loads(sheet.survey, options.room);
        if (options.json) {
            print(report::loads_json(answer));
        } else {
            print_page(report::loads_page(answer, page_options(options)));
            if (options.show_work)
                print(report::steps_text(report::loads_steps(answer, options.system), paper_of_output()));
        }
        return yes;
    });
}

int check(const Options& options) {
    const Sheet sheet = read_sheet(options.file);
    const bool right = sheet.check.mistakes.empty();
    if (!right) return print_mistakes(options, sheet);
    if (options.json)
        print(report::check_json(sheet.check));
    else
        print_page(report::check_page(sheet.check, page_options(options)));
    return yes;
}

int fittings(const Options& options) {
    try {
        const questions::FittingsAnswer answer = questions::list_fittings(fittings_question(options));
        if (options.json)
            print(report::fittings_json(answer));
        else
            print_page(report::fittings_page(answer, options.system));
        return yes;
    } catch (const house::AskedWrongly& e) {
        print_error(std::string("sillflow: ") + e.what() + "\n");
        return wrong;
    }
}

int start(const Options& options) {
    write_new_file(options.file, least_sheet());
    if (options.json) return print(report::start_json(options.file)), yes;
    print("wrote " + options.file +
          ": a small house with one new outlet. Put your own figures in; then\n    sillflow check " +
          options.file + "\n    sillflow branch " + options.file + "\n");
    return yes;
}

}  // namespace command_line
