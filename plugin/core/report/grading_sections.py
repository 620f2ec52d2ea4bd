"""A graded design for people: plan, sections, balance, haul and volumes, for the report and for a page of its own."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Tuple

from ..confidence import NORMAL_95
from ..earthwork.design_lines import DAYLIGHT_KINDS, DESIGN_LINE_NAMES, DesignLineKind
from ..earthwork.grading_study import BalanceStudy, GradingStudy
from ..earthwork.pads import GradedPad
from ..earthwork.side_slopes import Corner
from ..georeference.crs import height_unit
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .earth_units import EarthUnits, earth_units
from .grading_figures import balance_figure, design_map, section_figure
from .haul_section import haul_body
from .labels import Words, number, plain, significant
from .markup import Section
from .remarks import say_message
from .volume_sections import volume_body

CAUTIONS = (
    QT_TRANSLATE_NOOP(
        "core",
        "This is a study of grades and quantities, not a design for construction: levels, drainage, retaining works "
        "and the grades that local codes and accessibility rules ask for are the work of a licensed professional.",
    ),
    QT_TRANSLATE_NOOP(
        "core",
        "Whether slopes stand, in the end and while they are dug, is not checked here: it depends on soil, water and "
        "loads. Slope stability and excavation safety need licensed practice and the local codes.",
    ),
    QT_TRANSLATE_NOOP(
        "core",
        "Locate buried services before anyone digs: no survey of the surface shows them. Setting out and machine "
        "guidance need independent checks.",
    ),
)


def grading_sections(found: GradingStudy, words: Words) -> Tuple[Section, ...]:
    """The design and its volumes as two sections of the report."""
    title, volumes = QT_TRANSLATE_NOOP("core", "Grading"), QT_TRANSLATE_NOOP("core", "Earthwork of the grading")
    cautions = markup.caution([words(text) for text in CAUTIONS])
    return (
        ("grading", words(title), cautions + design_body(found, words)),
        ("grading-volumes", words(volumes), volumes_body(found, words)),
    )


def design_body(found: GradingStudy, words: Words) -> str:
    """The design as HTML: plan, what was graded, balance, sections, haul."""
    crs = found.site.design.crs
    units, words = earth_units(crs), words.on(crs)
    body = ""
    if found.messages:
        body += markup.bullets(say_message(said, words) for said in found.messages)
    body += _plan(found, words) + _pads_table(found, units, words) + _lines_table(found, units, words)
    if found.balanced is not None:
        body += _balance(found.balanced, units, words)
    body += _sections(found, words)
    return body + ("" if found.haul is None else haul_body(found.haul, units, words))


def volumes_body(found: GradingStudy, words: Words) -> str:
    """Cut, fill and net with their doubt, by depth, what is done with the earth, checks by other methods."""
    return volume_body(replace(found.study, messages=()), words)


# The design


def _plan(found: GradingStudy, words: Words) -> str:
    picture = design_map(found.site, words)
    alt = QT_TRANSLATE_NOOP("core", "Plan of the design over the shaded ground, with slopes and daylight lines.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Plan of the design: arrows and ticks point downhill; slopes are told as 1 up or down in so many out, falls of "
        "the platform in per cent.",
    )
    return markup.figure(picture.uri, words(alt), words(caption))


def _pads_table(found: GradingStudy, units: EarthUnits, words: Words) -> str:
    if not found.site.pads:
        return ""
    rows = [_pad_row(k, each, found, units, words) for k, each in enumerate(found.site.pads, 1)]
    rise = height_unit(found.site.design.crs)
    head = [
        words(QT_TRANSLATE_NOOP("core", "Pad")),
        words(QT_TRANSLATE_NOOP("core", "Middle height ({unit})"), unit=rise.symbol),
        words(QT_TRANSLATE_NOOP("core", "Falls (%)")),
        words(QT_TRANSLATE_NOOP("core", "Slopes of cut, fill")),
        words(QT_TRANSLATE_NOOP("core", "Cut ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "Fill ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "Net ({unit})"), unit=units.volume),
    ]
    return markup.table(words(QT_TRANSLATE_NOOP("core", "What is graded")), head, rows, "hnnwnnn")


def _pad_row(k: int, each: GradedPad, found: GradingStudy, units: EarthUnits, words: Words) -> Tuple[str, ...]:
    pad, volume = each.pad, each.grading.volume
    ring = pad.rings[0][:, :2]
    middle = (ring.min(axis=0) + ring.max(axis=0)) / 2
    rise = height_unit(found.site.design.crs)
    fall = 100 * math.hypot(pad.plane.east, pad.plane.north)
    slopes = f"1 : {plain(pad.slopes.cut_run)}, 1 : {plain(pad.slopes.fill_run)}"
    if any(runs is not None for runs in pad.runs):
        slopes += "; " + words(QT_TRANSLATE_NOOP("core", "by edge"))
    if pad.slopes.corner is Corner.MITRE:
        slopes += "; " + words(QT_TRANSLATE_NOOP("core", "corners mitred"))
    return (
        pad.name or number(k),
        number(float(pad.plane.at(middle)) / rise.metres, 3),
        number(fall, 2),
        slopes,
        units.volumes(volume.cut),
        units.volumes(volume.fill),
        units.volumes(volume.net),
    )


def _lines_table(found: GradingStudy, units: EarthUnits, words: Words) -> str:
    rows = []
    for kind in (DesignLineKind.PLATFORM_EDGE, *DAYLIGHT_KINDS):
        length = sum(line.length for line in found.site.lines if line.kind is kind)
        if length > 0:
            rows.append((words(DESIGN_LINE_NAMES[kind]), f"{units.lengths(length, 1)} {units.length}"))
    rows.append(
        (
            words(QT_TRANSLATE_NOOP("core", "ground taken by the design, in plan")),
            f"{units.areas(found.site.design.plan_area)} {units.area}",
        )
    )
    return markup.facts(words(QT_TRANSLATE_NOOP("core", "Lengths in plan, and area")), rows)


# Balance


def _balance(found: BalanceStudy, units: EarthUnits, words: Words) -> str:
    half = NORMAL_95 * found.sigma
    lengths = units.unit.metres
    name = QT_TRANSLATE_NOOP("core", "balanced height")
    if math.isnan(found.first):
        name = QT_TRANSLATE_NOOP("core", "balanced shift of the design")
    doubt = f" ± {significant(half / lengths)}" if math.isfinite(half) and half > 0 else ""
    volume = found.balance.volume
    rows = [
        (words(name), f"{units.lengths(found.height, 3)}{doubt} {units.length}"),
        (words(QT_TRANSLATE_NOOP("core", "shift from the first height")), _signed(found.balance.shift, units)),
        (words(QT_TRANSLATE_NOOP("core", "cut there")), f"{units.volumes(volume.cut)} {units.volume}"),
        (words(QT_TRANSLATE_NOOP("core", "fill there")), f"{units.volumes(volume.fill)} {units.volume}"),
        (words(QT_TRANSLATE_NOOP("core", "fill from one of cut")), plain(round(found.factor, 4))),
        (
            words(QT_TRANSLATE_NOOP("core", "surplus asked for")),
            f"{units.volumes(found.surplus)} {units.volume}",
        ),
        (
            words(QT_TRANSLATE_NOOP("core", "left over: cut × factor less fill less surplus")),
            f"{units.volumes(found.balance.rest)} {units.volume}",
        ),
    ]
    text = QT_TRANSLATE_NOOP(
        "core",
        "The height at which cut times the factor equals fill and the surplus asked for. Its ± (95 %) is the doubt of "
        "the volumes over the area by which they change; the factor's own doubt is not in it, and is often "
        "larger.",
    )
    picture = balance_figure(found, units, words)
    alt = QT_TRANSLATE_NOOP("core", "Cut, fill and what is left over against the height of the design.")
    caption = QT_TRANSLATE_NOOP(
        "core", "Volumes as the design is raised or lowered, slopes graded anew at each height."
    )
    return (
        markup.facts(words(QT_TRANSLATE_NOOP("core", "Balance of cut and fill")), rows)
        + markup.paragraph(words(text))
        + markup.figure(picture.uri, words(alt), words(caption))
    )


def _signed(metres: float, units: EarthUnits) -> str:
    text = units.lengths(metres, 3)
    return f"{'+' if metres > 0 else ''}{text} {units.length}"


# Sections


def _sections(found: GradingStudy, words: Words) -> str:
    html = ""
    for section in found.sections:
        if not section.design:
            continue
        picture = section_figure(section, found.site.design, words)
        name = section.name.say(words.translate)
        alt = QT_TRANSLATE_NOOP("core", "Vertical section {name}: existing ground and design.")
        caption = QT_TRANSLATE_NOOP(
            "core", "Section {name}. Heights are exact all along, at every edge of both surfaces."
        )
        html += markup.figure(picture.uri, words(alt, name=name), words(caption, name=name))
    return html
