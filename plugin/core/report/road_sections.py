"""A road for people: sections of the report, and a page of its own."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Callable, List, Sequence, Tuple

import numpy as np

from ..alignment.grades import WindowSlopes
from ..alignment.indications import KerbFlow
from ..alignment.line import Alignment
from ..alignment.parts import Part
from ..alignment.pooling import rows_of
from ..alignment.rules import Quantity, Rule
from ..alignment.slopes import HeightNoise
from ..alignment.study import RoadStudy
from ..alignment.verdicts import Verdict
from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP
from ..surface.tin import Tin
from ..units import SiteUnits
from . import markup
from .labels import NOT_KNOWN, SmallLengths, Words, number
from .markup import Section
from .remarks import say_message
from .road_figures import VERDICTS, crossfall_figure, profile_figure, verdict_figure

TITLE = QT_TRANSLATE_NOOP("core", "Road: {name}")
CAUTIONS = (
    QT_TRANSLATE_NOOP(
        "core",
        "This is an indication from a survey, not an approval. Whether a road, walk or ramp meets its limits is "
        "decided by the codes that apply where it lies and by a licensed professional.",
    ),
    QT_TRANSLATE_NOOP(
        "core",
        "The limits were compared with their sources only as the table says; check them against your copy. Exceptions "
        "in the sources, such as landings, lengths and crossings, are not checked here.",
    ),
    QT_TRANSLATE_NOOP("core", "Not for construction, traffic or setting out without independent checks."),
)
FLOWS = {
    KerbFlow.BOTH: QT_TRANSLATE_NOOP("core", "to both edges"),
    KerbFlow.LEFT: QT_TRANSLATE_NOOP("core", "to the left edge"),
    KerbFlow.RIGHT: QT_TRANSLATE_NOOP("core", "to the right edge"),
    KerbFlow.NEITHER: QT_TRANSLATE_NOOP("core", "to neither edge"),
    KerbFlow.UNSURE: QT_TRANSLATE_NOOP("core", "too close to tell"),
    KerbFlow.NO_SURFACE: QT_TRANSLATE_NOOP("core", "no surface"),
}
PART_NAMES = {
    Part.LANE: QT_TRANSLATE_NOOP("core", "lane"),
    Part.LEFT: QT_TRANSLATE_NOOP("core", "left half"),
    Part.RIGHT: QT_TRANSLATE_NOOP("core", "right half"),
}
QUANTITIES = {
    Quantity.GRADE: QT_TRANSLATE_NOOP("core", "grade"),
    Quantity.CROSSFALL: QT_TRANSLATE_NOOP("core", "crossfall"),
    Quantity.CREST_K: QT_TRANSLATE_NOOP("core", "K of crests"),
    Quantity.SAG_K: QT_TRANSLATE_NOOP("core", "K of sags"),
}
ALWAYS = QT_TRANSLATE_NOOP("core", "always")
_MOST_TIMES = 20.0  # more points than so many times as many nobody takes
_STRETCHES_SHOWN = 150


def write_road(
    study: RoadStudy, tin: Tin, path: PathLike, translate: Callable[[str], str] = str, language: str = "en"
) -> None:
    """Write ``study`` as an HTML page that needs no other file. Raises SurveyError when it cannot be written."""
    words = Words(translate)
    title = words(TITLE, name=study.line.name)
    lead = markup.caution([words(text) for text in CAUTIONS])
    main = "".join(markup.section(*each) for each in road_parts(study, words))
    with replace_file(path) as name, open(name, "w", encoding="utf-8", newline="\n") as stream:
        stream.write(markup.page(title, language, lead, main))


def road_section(study: RoadStudy, words: Words) -> Section:
    """All of it as one section of the report."""
    body = markup.caution([words(text) for text in CAUTIONS])
    body += "".join(markup.part(title, html) for _, title, html in road_parts(study, words))
    return "road", words(TITLE, name=study.line.name), body


def road_parts(study: RoadStudy, words: Words) -> Sequence[Section]:
    """Anchor, title and HTML of each part."""
    words = replace(words, units=SiteUnits(study.line.unit, study.line.unit))
    return (
        ("profile", words(QT_TRANSLATE_NOOP("core", "Profile and grades")), _profile(study, words)),
        ("crossfall", words(QT_TRANSLATE_NOOP("core", "Crossfall")), _crossfall(study, words)),
        ("limits", words(QT_TRANSLATE_NOOP("core", "Against the limits")), _limits(study, words)),
        ("indications", words(QT_TRANSLATE_NOOP("core", "Indications")), _indications(study, words)),
    )


def _length(line: Alignment, metres: float, decimals: int = 1) -> str:
    return f"{number(metres / line.unit.metres, decimals)} {line.unit.symbol}"


def _stations(line: Alignment, begin: float, end: float) -> str:
    # no-break spaces and word joiners: a browser would part the line after the dash
    return f"{line.label(begin)}\u00a0\u2060{NOT_KNOWN}\u2060\u00a0{line.label(end)}"


# Profile and crossfall


def _profile(study: RoadStudy, words: Words) -> str:
    line = study.line
    text = QT_TRANSLATE_NOOP(
        "core", "{name} is {length} long, from station {begin} to {end}, seen in the way of rising stations."
    )
    said = {"name": line.name, "length": _length(line, line.length, 2)}
    html = markup.paragraph(words(text, **said, begin=line.label(0.0), end=line.label(line.length)))
    html += markup.paragraph(_noise(study, words))
    if study.messages:
        html += markup.bullets(say_message(message, words) for message in study.messages)
    alt = QT_TRANSLATE_NOOP("core", "Height and grade over the stations of {name}.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Above the heights, exaggerated; below the grade, the straight line that fits the heights of {window} best, "
        "with the interval in which it lies with 95 %.",
    )
    picture = profile_figure(study, words)
    window = _length(line, _window(study.grades))
    html += markup.figure(picture.uri, words(alt, name=line.name), words(caption, window=window))
    return html + _fit(study, words)


def _window(slopes: WindowSlopes) -> float:
    return float(slopes.end[0] - slopes.begin[0])


def _noise(study: RoadStudy, words: Words) -> str:
    """What the standard deviations rest on."""
    sigma, small = study.sigma, SmallLengths(study.line.unit)
    own = float(np.nanmedian(sigma.own if isinstance(sigma, HeightNoise) else sigma))
    if not isinstance(sigma, HeightNoise) or sigma.drift == 0:
        text = QT_TRANSLATE_NOOP(
            "core", "Standard deviations come from heights good to {own}, each with an error of its own; no drift."
        )
        return words(text, own=f"{small.figure(own, 1)} {small.symbol}")
    text = QT_TRANSLATE_NOOP(
        "core",
        "Standard deviations come from heights good to {total}: {own} of each point's own and {drift} that "
        "drift within {time} s, common to points recorded together.",
    )
    said = {"total": float(np.hypot(own, sigma.drift)), "own": own, "drift": sigma.drift}
    shown = {name: f"{small.figure(value, 1)} {small.symbol}" for name, value in said.items()}
    return words(text, **shown, time=number(sigma.drift_time))


def _fit(study: RoadStudy, words: Words) -> str:
    fit, line = study.fit, study.line
    if fit is None:
        text = QT_TRANSLATE_NOOP("core", "The profile is too short to fit grades and vertical curves to.")
        return markup.paragraph(words(text))
    rows: List[Tuple[str, ...]] = []
    for k, grade in enumerate(fit.grades):
        percent = f"{number(100 * grade.grade, 2)} ± {number(100 * grade.sigma, 2)}"
        name = words(QT_TRANSLATE_NOOP("core", "grade"))
        rows.append((_stations(line, grade.begin, grade.end), name, percent, "", ""))
        if k < len(fit.curves):
            curve = fit.curves[k]
            kind = QT_TRANSLATE_NOOP("core", "crest") if curve.crest else QT_TRANSLATE_NOOP("core", "sag")
            change = f"{number(100 * curve.grade_before, 2)} → {number(100 * curve.grade_after, 2)}"
            value = f"{number(curve.k / line.unit.metres, 1)} ± {number(curve.k_sigma / line.unit.metres, 1)}"
            value = value if curve.determined else words(QT_TRANSLATE_NOOP("core", "not determined"))
            meeting = f"{line.label(curve.meeting)}, {number(curve.meeting_height / line.unit.metres, 3)}"
            rows.append((_stations(line, curve.begin, curve.end), words(kind), change, value, meeting))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Stations")),
        words(QT_TRANSLATE_NOOP("core", "Kind")),
        words(QT_TRANSLATE_NOOP("core", "Grade (%)")),
        words(QT_TRANSLATE_NOOP("core", "K ({unit}/%)"), unit=line.unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Grades meet at (station, height)")),
    ]
    caption = QT_TRANSLATE_NOOP(
        "core", "Grades and vertical curves fitted; residuals {spread} (robust), at most {worst}"
    )
    small = SmallLengths(line.unit)
    spread, worst = (f"{small.figure(value, 1)} {small.symbol}" for value in (fit.spread, fit.worst))
    return markup.table(words(caption, spread=spread, worst=worst), head, rows, "hwnnw")


def _crossfall(study: RoadStudy, words: Words) -> str:
    line, (low, high) = study.line, study.options.lane
    alt = QT_TRANSLATE_NOOP("core", "Crossfall over the stations of {name}.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Crossfall from {left} left to {right} right of the line, positive where the surface rises to the right, over "
        "{window}, with its 95 % interval; neighbouring windows help each other. Where the lane has a crown, each half "
        "has a crossfall of its own.",
    )
    said = {"left": _length(line, -low, 2), "right": _length(line, high, 2)}
    picture = crossfall_figure(study, words)
    window = _length(line, _window(study.crossfalls.by[Part.LANE]))
    html = markup.figure(picture.uri, words(alt, name=line.name), words(caption, **said, window=window))
    return html + _crowns(study, words)


def _range(values: np.ndarray) -> str:
    """From the least to the greatest slope, in percent."""
    known = 100 * values[np.isfinite(values)]
    return f"{number(known.min(), 2)} … {number(known.max(), 2)}" if len(known) else NOT_KNOWN


def _crowns(study: RoadStudy, words: Words) -> str:
    """Where the lane has a crown, and what its halves fall by in the mean."""
    across, line = study.crossfalls, study.line
    stretch = across.by[Part.LANE].stretch
    rows = []
    for first, last in rows_of(across.crowned):
        own = slice(first, last)
        place = f"{number(_mean(across.crown[own]) / line.unit.metres, 2)} ± "
        place += number(_mean(across.crown_sigma[own]) / line.unit.metres, 2)
        falls = [_range(across.by[part].value[own]) for part in (Part.LEFT, Part.RIGHT)]
        rows.append((_stations(line, float(stretch[first, 0]), float(stretch[last - 1, 1])), place, *falls))
    if not rows:
        return ""
    head = [
        words(QT_TRANSLATE_NOOP("core", "Stations")),
        words(QT_TRANSLATE_NOOP("core", "Crown, right of the line ({unit})"), unit=line.unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Crossfall of the left half (%)")),
        words(QT_TRANSLATE_NOOP("core", "Crossfall of the right half (%)")),
    ]
    caption = QT_TRANSLATE_NOOP(
        "core", "Where the lane has a crown, found from the surface, with ± one standard deviation"
    )
    return markup.table(words(caption), head, rows, "hnnn")


# Limits


def _limits(study: RoadStudy, words: Words) -> str:
    alt = QT_TRANSLATE_NOOP("core", "A bar along {name} for each of {count} rules with its verdicts.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Verdicts at 95 % along the line, by the number of the rule. A stretch passes or fails when the whole "
        "interval of its slope does; else it is too close to tell, and more or better points are needed. Where the "
        "lane has a crown, the upper half of a bar is the left half of the lane.",
    )
    picture = verdict_figure(study, words)
    count = number(len(study.rules))
    html = markup.figure(picture.uri, words(alt, name=study.line.name, count=count), words(caption))
    html += _rules_table(study, words) + _sources_table(study, words) + _stretches_table(study, words)
    return html + markup.bullets(say_message(message, words) for message in study.checks.messages)


def _limit(rule: Rule) -> str:
    return ("≥\u00a0" if rule.at_least else "≤\u00a0") + rule.limit_text


def _rules_table(study: RoadStudy, words: Words) -> str:
    """Metres of each verdict by rule."""
    line, rows = study.line, []
    for k, rule in enumerate(study.rules, 1):
        length = study.checks.lengths(rule)
        if not study.checks.of(rule):
            continue
        shown = (Verdict.PASS, Verdict.FAIL, Verdict.TOO_CLOSE, Verdict.NOT_APPLICABLE, Verdict.NO_SURFACE)
        values = [number(length[verdict] / line.unit.metres, 1) if length[verdict] else "" for verdict in shown]
        rows.append((f"{k}", rule.name, f"{words(QUANTITIES[rule.quantity])} {_limit(rule)}", *values))
    head = [
        words(QT_TRANSLATE_NOOP("core", "No.")),
        words(QT_TRANSLATE_NOOP("core", "Rule")),
        words(QT_TRANSLATE_NOOP("core", "Limit")),
        *(words(VERDICTS[v]) for v in (Verdict.PASS, Verdict.FAIL, Verdict.TOO_CLOSE)),
        words(VERDICTS[Verdict.NOT_APPLICABLE]),
        words(VERDICTS[Verdict.NO_SURFACE]),
    ]
    caption = words(QT_TRANSLATE_NOOP("core", "Length of each verdict ({unit})"), unit=line.unit.symbol)
    return markup.table(caption, head, rows, "nhwnnnnn")


def _sources_table(study: RoadStudy, words: Words) -> str:
    rows = []
    for k, rule in enumerate(study.rules, 1):
        slope = rule.quantity in (Quantity.GRADE, Quantity.CROSSFALL)
        window = _length(study.line, rule.window) if slope else ""
        applies = words(ALWAYS) if rule.condition is None else rule.condition.text
        rows.append((f"{k}", rule.name, window, applies, rule.source, rule.checked, rule.note))
    head = [
        words(QT_TRANSLATE_NOOP("core", "No.")),
        words(QT_TRANSLATE_NOOP("core", "Rule")),
        words(QT_TRANSLATE_NOOP("core", "Window")),
        words(QT_TRANSLATE_NOOP("core", "Applies")),
        words(QT_TRANSLATE_NOOP("core", "Source of the limit")),
        words(QT_TRANSLATE_NOOP("core", "Compared with it")),
        words(QT_TRANSLATE_NOOP("core", "Note")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "The rules, where their limits come from, and how they apply")
    return markup.table(words(caption), head, rows, "nhwwwww")


def _stretches_table(study: RoadStudy, words: Words) -> str:
    """Every stretch that can be judged, those that do not pass first where there are many."""
    place = {rule: k for k, rule in enumerate(study.rules, 1)}
    judged = (Verdict.FAIL, Verdict.TOO_CLOSE, Verdict.PASS)
    found = [each for each in study.checks.stretches if each.verdict in judged]
    if len(found) > _STRETCHES_SHOWN:
        found.sort(key=lambda each: judged.index(each.verdict))
    rows = []
    for each in found[:_STRETCHES_SHOWN]:
        slope = each.rule.quantity in (Quantity.GRADE, Quantity.CROSSFALL)
        factor, unit, decimals = (100.0, "%", 2) if slope else (1.0, "m/%", 1)
        value = f"{number(factor * each.value, decimals)} ± {number(factor * each.sigma, decimals)} {unit}"
        stations = _stations(study.line, each.begin, each.end)
        length = number(each.length / study.line.unit.metres, 1)
        part = words(PART_NAMES[each.part]) if each.rule.quantity is Quantity.CROSSFALL else ""
        verdict = words(VERDICTS[each.verdict])
        if each.verdict is Verdict.TOO_CLOSE and each.times_the_points < _MOST_TIMES:
            times = number(max(each.times_the_points, 1.1), 1)
            verdict = words(
                QT_TRANSLATE_NOOP("core", "too close to tell; {times} times the points would tell"), times=times
            )
        row = (f"{place[each.rule]}", stations, part, length, verdict, value, _limit(each.rule))
        rows.append(row)
    head = [
        words(QT_TRANSLATE_NOOP("core", "Rule")),
        words(QT_TRANSLATE_NOOP("core", "Stations")),
        words(QT_TRANSLATE_NOOP("core", "Part of the lane")),
        words(QT_TRANSLATE_NOOP("core", "Length ({unit})"), unit=study.line.unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Verdict")),
        words(QT_TRANSLATE_NOOP("core", "Value")),
        words(QT_TRANSLATE_NOOP("core", "Limit")),
    ]
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Stretches, each with its value nearest to the limit or farthest beyond it ± one standard deviation: {shown} "
        "of {count}",
    )
    name = words(caption, shown=number(len(rows)), count=number(len(found)))
    return markup.table(name, head, rows, "nhwnwnn")


# Indications


def _indications(study: RoadStudy, words: Words) -> str:
    html = markup.paragraph(words(QT_TRANSLATE_NOOP("core", "None of these is a proof.")))
    return html + _flows(study, words) + _low_points(study, words) + _sight(study, words)


def _flows(study: RoadStudy, words: Words) -> str:
    """Where the crossfall leads water, in runs of windows that agree."""
    flows, line = study.flows, study.line
    stretch, flow = flows.left.slopes.stretch, flows.flow
    first = np.flatnonzero(np.append(True, flow[1:] != flow[:-1]))
    last = np.append(first[1:], len(flow))
    rows = []
    for i, j in zip(first.tolist(), last.tolist()):
        mean = [_mean(own.slopes.value[i:j]) for own in (flows.left, flows.right)]
        values = [number(100 * value, 1) for value in mean]
        rows.append((_stations(line, float(stretch[i, 0]), float(stretch[j - 1, 1])), words(FLOWS[flow[i]]), *values))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Stations")),
        words(QT_TRANSLATE_NOOP("core", "Water runs")),
        words(QT_TRANSLATE_NOOP("core", "Mean fall to the left (%)")),
        words(QT_TRANSLATE_NOOP("core", "to the right (%)")),
    ]
    caption = QT_TRANSLATE_NOOP(
        "core", "Crossfall towards the edges: does each half of the lane fall to its edge by {least} % for sure?"
    )
    least = number(100 * study.options.least_fall, 1)
    return markup.table(words(caption, least=least), head, rows, "hwnn")


def _mean(values: np.ndarray) -> float:
    known = values[np.isfinite(values)]
    return float(known.mean()) if len(known) else float("nan")


def _low_points(study: RoadStudy, words: Words) -> str:
    line, small = study.line, SmallLengths(study.line.unit)
    html = ""
    rows = [
        (
            line.label(low.at),
            _length(line, gutter.offset, 2),
            f"{small.figure(low.depth)} ± {small.figure(low.sigma)}",
            f"{line.label(low.sill)}, {_length(line, low.sill_offset, 2)}",
            number((low.end - low.begin) / line.unit.metres, 1),
        )
        for gutter in study.gutters
        for low in gutter.low_points
    ]
    if rows:
        head = [
            words(QT_TRANSLATE_NOOP("core", "Station")),
            words(QT_TRANSLATE_NOOP("core", "Offset")),
            words(QT_TRANSLATE_NOOP("core", "Depth ({unit})"), unit=small.symbol),
            words(QT_TRANSLATE_NOOP("core", "Runs off at station, offset")),
            words(QT_TRANSLATE_NOOP("core", "Length of the water ({unit})"), unit=line.unit.symbol),
        ]
        text = QT_TRANSLATE_NOOP(
            "core",
            "Low points along the edges, where water stands until it runs off along the gutter, over the kerb or the "
            "crown, or into an inlet that is known",
        )
        caption = words(text)
        html += markup.table(caption, head, rows, "hnnwn")
    else:
        text = QT_TRANSLATE_NOOP("core", "Along the edges of the lane no low point is deeper than the noise.")
        html += markup.paragraph(words(text))
    cautions = dict.fromkeys(say_message(said, words) for gutter in study.gutters for said in gutter.messages[:1])
    return html + markup.bullets(cautions)


def _sight(study: RoadStudy, words: Words) -> str:
    if study.sight is None:
        return ""
    if not study.sight.crests:
        return markup.paragraph(words(QT_TRANSLATE_NOOP("core", "No crest was fitted, so nothing is said of sight.")))

    def speed(value: Any) -> str:
        return NOT_KNOWN if value is None else number(value)

    line = study.line
    rows = [
        (
            _stations(line, crest.curve.begin, crest.curve.end),
            f"{number(crest.curve.k / line.unit.metres, 1)} ± {number(crest.curve.k_sigma / line.unit.metres, 1)}",
            speed(crest.speed),
            speed(crest.doubtful),
        )
        for crest in study.sight.crests
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Crest, stations")),
        words(QT_TRANSLATE_NOOP("core", "K ({unit}/%)"), unit=line.unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Speed reached for sure")),
        words(QT_TRANSLATE_NOOP("core", "and perhaps")),
    ]
    caption = words(QT_TRANSLATE_NOOP("core", "Sight on crests by your table of speeds and least K"))
    html = markup.table(caption, head, rows, "hnnn")
    return html + markup.bullets(say_message(said, words) for said in study.sight.messages)
