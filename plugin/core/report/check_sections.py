"""The sections of the report about the automatic checks: what they found, and how heights repeat."""

from __future__ import annotations

import math
from typing import Callable, List, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP
from ..points.decisions import REASON_WORDS, STATUS_WORDS
from ..points.pointset import Reason, Status
from ..quality.check import Finding, SurveyCheck
from ..quality.interval import claimed_sigma
from ..quality.overrides import OverrideReport
from ..quality.repeatability import RunRepeatability
from ..quality.tolerances import ToleranceSet
from . import figures, markup
from .labels import NOT_KNOWN, Words, number, plain
from .markup import Section
from .remarks import REASONS, say_message
from .results import JobResult
from .run_figures import runs_figure

_FINDINGS_SHOWN = 100
_OVERRIDES_SHOWN = 50
_RUNS_SHOWN = 60
_RUNS_DRAWN = 40
_LEAST_MEETINGS = 3
_ABOUT_LIMITS = QT_TRANSLATE_NOOP(
    "core",
    "Limits that nobody asked for do not reject more than a tenth of the points: those are flagged, and it is said "
    "above. Tilt is a fault only of a rover that does not compensate it: as the one who set it up says "
    "(--tilt-compensated), else as the heights tell, at places visited twice and along the walk.",
)
STATUS_NAMES = {Status.USED: figures.USED, Status.FLAGGED: figures.FLAGGED, Status.REJECTED: figures.REJECTED}


def check_section(result: JobResult, words: Words) -> Section:
    """Tolerances, what was found, and what a hand decided against it."""
    title, check = words(QT_TRANSLATE_NOOP("core", "Automatic checks")), result.check
    if check is None:
        text = QT_TRANSLATE_NOOP(
            "core", "The points were not checked (--no-check): what the receiver got wrong is in the surface."
        )
        return "checks", title, markup.paragraph(words(text))
    limits = _limits(check.tolerances, words)
    caption = QT_TRANSLATE_NOOP("core", "What single points are held to: the set “{name}”")
    body = markup.bullets(say_message(said, words) for said in check.first) if check.first else ""
    body += markup.facts(words(caption, name=check.tolerances.name), limits)
    body += markup.paragraph(words(_ABOUT_LIMITS))
    text = QT_TRANSLATE_NOOP(
        "core",
        "Beyond them lies what no receiver tells: heights are held against the walk itself, the passes beside it, "
        "places walked twice and coded lines, by the noise found in this survey. Steps that several passes saw at one "
        "line are ground: kerbs, walls, ditches.",
    )
    body += markup.paragraph(words(text)) + _findings_table(check, words)
    return "checks", title, body + _overrides(result.overrides, words)


def _limits(limits: ToleranceSet, words: Words) -> List[Tuple[str, str]]:
    plan, rise = words.units.plan, words.units.height
    rows = [
        (QT_TRANSLATE_NOOP("core", "standard deviation in plan, at most"), plan.metres, limits.sigma_h, plan.symbol),
        (
            QT_TRANSLATE_NOOP("core", "standard deviation of the height, at most"),
            rise.metres,
            limits.sigma_v,
            rise.symbol,
        ),
        (QT_TRANSLATE_NOOP("core", "tilt, at most"), 1.0, limits.tilt, "°"),
        (QT_TRANSLATE_NOOP("core", "PDOP, at most"), 1.0, limits.pdop, ""),
        (QT_TRANSLATE_NOOP("core", "age of the correction, at most"), 1.0, limits.age, "s"),
        (QT_TRANSLATE_NOOP("core", "observations, at least"), 1.0, limits.epochs, ""),
    ]
    told = [
        (words(name), f"{plain(round(value / metres, 4))} {unit}".rstrip())
        for name, metres, value, unit in rows
        if value is not None
    ]
    if limits.fixes is not None:
        name = QT_TRANSLATE_NOOP("core", "fixes accepted (numbers of NMEA 0183 GGA)")
        told.insert(0, (words(name), ", ".join(str(fix) for fix in limits.fixes)))
    return told


def _findings_table(check: SurveyCheck, words: Words) -> str:
    if not check.findings:
        return markup.paragraph(words(QT_TRANSLATE_NOOP("core", "The checks found nothing.")))
    rows = [_finding_row(found, words) for found in check.findings[:_FINDINGS_SHOWN]]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Status")),
        words(QT_TRANSLATE_NOOP("core", "Points")),
        words(QT_TRANSLATE_NOOP("core", "Size ({unit})"), unit=words.small.symbol),
        words(QT_TRANSLATE_NOOP("core", "Size / its sigma")),
        words(QT_TRANSLATE_NOOP("core", "What was found")),
        words(QT_TRANSLATE_NOOP("core", "Reasons")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "What the checks found, in the order of recording: {shown} of {count}")
    name = words(caption, shown=number(len(rows)), count=number(len(check.findings)))
    return markup.table(name, head, rows, "hnnnww")


def _finding_row(found: Finding, words: Words) -> Tuple[str, ...]:
    return (
        words(STATUS_NAMES[found.status]),
        number(len(found.indices)),
        words.small.figure(found.size),
        number(found.significance, 1),
        say_message(found.message, words),
        "; ".join(words(text) for reason, text in REASONS.items() if found.reason & reason),
    )


def _overrides(report: Optional[OverrideReport], words: Words) -> str:
    """Where the hand overruled the checks."""
    if report is None:
        return ""
    text = QT_TRANSLATE_NOOP(
        "core",
        "Points that have another status by hand than the checks gave them: {changed}. Decisions that agree with the "
        "checks: {same}.",
    )
    said = markup.paragraph(words(text, changed=number(len(report)), same=number(report.confirmed)))
    rows = [
        (
            str(row["line"]) if report.source is None else f"{row['source']}: {row['line']}",
            words(STATUS_NAMES[STATUS_WORDS[row["check_status"]]]),
            _reasons(row["check_reason"], words),
            words(STATUS_NAMES[STATUS_WORDS[row["status"]]]),
            _reasons(row["reason"], words),
        )
        for row in report.rows()[:_OVERRIDES_SHOWN]
    ]
    if not rows:
        return said
    head = [
        words(
            QT_TRANSLATE_NOOP("core", "Line") if report.source is None else QT_TRANSLATE_NOOP("core", "File and line")
        ),
        words(QT_TRANSLATE_NOOP("core", "By the checks")),
        words(QT_TRANSLATE_NOOP("core", "Their reasons")),
        words(QT_TRANSLATE_NOOP("core", "By hand")),
        words(QT_TRANSLATE_NOOP("core", "Reasons given")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Decisions by hand against the checks: {shown} of {count}")
    name = words(caption, shown=number(len(rows)), count=number(len(report)))
    return said + markup.table(name, head, rows, "hwwww")


def _reasons(text: str, words: Words) -> str:
    """Reasons in words from their short words joined by +."""
    known = [REASON_WORDS[word] for word in text.split("+") if word in REASON_WORDS]
    return "; ".join(words(REASONS.get(Reason(reason), "")) for reason in known)


# Repeatability


def repeatability_section(result: JobResult, words: Words) -> Section:
    """How heights repeat where the site was walked twice, against what the receiver claims."""
    title, check = words(QT_TRANSLATE_NOOP("core", "How heights repeat")), result.check
    if check is None or check.noise is None or not math.isfinite(check.noise.white):
        text = QT_TRANSLATE_NOOP("core", "There is no walk long enough to tell how heights repeat.")
        if check is None:
            text = QT_TRANSLATE_NOOP("core", "The points were not checked, so nothing is said of how heights repeat.")
        return "repeatability", title, markup.paragraph(words(text))
    noise, claimed, small = check.noise, claimed_sigma(check.points), _small(words)
    rows = [
        (QT_TRANSLATE_NOOP("core", "new at every point, along the passes"), small(noise.white)),
        (QT_TRANSLATE_NOOP("core", "wandering, from one visit to another"), small(noise.drift)),
        (QT_TRANSLATE_NOOP("core", "one height, both together"), small(noise.total)),
        (QT_TRANSLATE_NOOP("core", "its 95 % interval"), f"{small(noise.low)} {NOT_KNOWN} {small(noise.high)}"),
        (QT_TRANSLATE_NOOP("core", "degrees of freedom"), number(noise.freedom)),
        (QT_TRANSLATE_NOOP("core", "places visited twice"), number(noise.encounters)),
        (QT_TRANSLATE_NOOP("core", "claimed by the receiver, root mean square"), small(claimed)),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Standard deviation of a height, found in this survey ({unit})")
    body = markup.facts(words(caption, unit=words.small.symbol), [(words(name), value) for name, value in rows])
    body += _against_claim(check, claimed, words) + _runs_figure(check, words) + _runs_table(check, words)
    return "repeatability", title, body


def _small(words: Words) -> Callable[[float], str]:
    """How a standard deviation of a height is told, to a tenth of a millimetre."""
    return lambda metres: words.small.figure(metres, 1)


def _against_claim(check: SurveyCheck, claimed: float, words: Words) -> str:
    noise = check.noise
    if noise is None or not math.isfinite(noise.total):
        text = QT_TRANSLATE_NOOP(
            "core",
            "Too few places were visited twice to say how far heights wander. Walk a few passes across the others.",
        )
    elif not math.isfinite(claimed):
        text = QT_TRANSLATE_NOOP("core", "The receiver claims nothing to compare with.")
    elif claimed < noise.low:
        text = QT_TRANSLATE_NOOP("core", "The receiver claims less noise than there is: do not rely on its claims.")
    elif claimed > noise.high:
        text = QT_TRANSLATE_NOOP(
            "core", "The receiver claims more noise than was found: its claims are on the safe side."
        )
    else:
        text = QT_TRANSLATE_NOOP("core", "What the receiver claims agrees with what was found.")
    more = QT_TRANSLATE_NOOP(
        "core",
        "This is how far the heights of this survey scatter about their common error, on even ground. Errors that all "
        "visits share (base station, geoid, pole height) do not show here; check points show them.",
    )
    return markup.paragraph(words(text)) + markup.paragraph(words(more))


def _told(check: SurveyCheck) -> List[RunRepeatability]:
    """The runs that met others at enough places to say something of them."""
    return [run for run in check.runs if run.freedom >= _LEAST_MEETINGS and math.isfinite(run.sigma)]


def _lines_of(check: SurveyCheck, run: RunRepeatability) -> str:
    lines = check.points.source_line[np.flatnonzero(check.run == run.run)]
    return f"{lines[0]}{NOT_KNOWN}{lines[-1]}"


def _runs_figure(check: SurveyCheck, words: Words) -> str:
    """The same as the table for the eye."""
    told, noise = _told(check)[:_RUNS_DRAWN], check.noise
    if not told or noise is None:
        return ""
    picture = runs_figure(told, [_lines_of(check, run) for run in told], noise, words)
    alt = QT_TRANSLATE_NOOP(
        "core",
        "Dots and intervals: the standard deviation of a height found for each of {shown} runs, from {low} to {high} "
        "{unit}, beside what the receiver claims; {off} claims lie outside the interval of their run.",
    )
    caption = QT_TRANSLATE_NOOP(
        "core",
        "How heights of each run repeat where it met others, against the receiver's claim: {shown} of {count} runs. "
        "Grey: the whole survey.",
    )
    said = {"shown": number(len(told)), "count": number(len(_told(check)))}
    sizes, small = [run.sigma for run in told], _small(words)
    off = sum(math.isfinite(run.claimed) and not run.agrees for run in told)
    text = words(alt, low=small(min(sizes)), high=small(max(sizes)), off=number(off), unit=words.small.symbol, **said)
    return markup.figure(picture.uri, text, words(caption, **said))


def _runs_table(check: SurveyCheck, words: Words) -> str:
    told = _told(check)
    if not told:
        return ""
    rows, small = [], _small(words)
    for run in told[:_RUNS_SHOWN]:
        verdict = (
            QT_TRANSLATE_NOOP("core", "agrees") if run.agrees else QT_TRANSLATE_NOOP("core", "outside the interval")
        )
        known = math.isfinite(run.claimed)
        rows.append(
            (
                _lines_of(check, run),
                number(run.freedom),
                small(run.sigma),
                f"{small(run.low)} {NOT_KNOWN} {small(run.high)}",
                small(run.claimed),
                words(verdict) if known else "",
            )
        )
    head = [
        words(QT_TRANSLATE_NOOP("core", "Lines of the file")),
        words(QT_TRANSLATE_NOOP("core", "Places met")),
        words(QT_TRANSLATE_NOOP("core", "Found ({unit})"), unit=words.small.symbol),
        words(QT_TRANSLATE_NOOP("core", "95 % interval ({unit})"), unit=words.small.symbol),
        words(QT_TRANSLATE_NOOP("core", "Claimed ({unit})"), unit=words.small.symbol),
        words(QT_TRANSLATE_NOOP("core", "The claim")),
    ]
    caption = QT_TRANSLATE_NOOP(
        "core", "Run by run, where a run met others at {least} places or more: {shown} of {count} runs"
    )
    said = {"shown": number(len(rows)), "count": number(len(check.runs)), "least": number(_LEAST_MEETINGS)}
    return markup.table(words(caption, **said), head, rows, "hnnnnw")
