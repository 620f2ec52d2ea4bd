"""Cut and fill for people: what a comparison found, as parts of the report and of a page of its own."""

from __future__ import annotations

import math
from typing import List, Optional, Sequence, Tuple

from ..earthwork.doubt import Doubt, VolumeDoubt
from ..earthwork.layers import LayerVolumes
from ..earthwork.regions import PartVolume
from ..earthwork.study import Certainty, Study
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .earth_units import EarthUnits, earth_units
from .haul_section import haul_body
from .labels import NOT_KNOWN, Words, number, plain, significant
from .remarks import say_message
from .volume_figures import class_label, class_labels, depth_histogram, depth_map

CAUTIONS = (
    QT_TRANSLATE_NOOP(
        "core",
        "This is a computation, not a payment certificate: quantities for payment are measured as the contract says, "
        "by whom it says. It defers to the contract, local codes and licensed practice.",
    ),
    QT_TRANSLATE_NOOP("core", "Locate buried services before anyone digs: no survey of the surface shows them."),
)
SIGNS = QT_TRANSLATE_NOOP(
    "core",
    "Signs: cut is ground to be taken away (existing above design), fill ground to be placed (design above existing), "
    "both positive; net is fill less cut, above 0 where earth must be brought in. Volumes are as the ground lies, "
    "without shrink or swell, unless a table says otherwise.",
)  # fmt: skip
CUT = QT_TRANSLATE_NOOP("core", "cut")
FILL = QT_TRANSLATE_NOOP("core", "fill")
NET = QT_TRANSLATE_NOOP("core", "net (fill less cut)")
TOTAL = QT_TRANSLATE_NOOP("core", "all of the ground compared")
OUTSIDE = QT_TRANSLATE_NOOP("core", "outside the regions")


def volume_body(study: Study, words: Words) -> str:
    """A comparison as HTML: numbers with their doubt, map, histogram, classes, regions, earth, checks."""
    crs = study.comparison.existing.crs
    units, words = earth_units(crs), words.on(crs)
    body = markup.paragraph(lead(study, units, words)) + markup.paragraph(words(SIGNS))
    if study.messages:
        body += markup.bullets(say_message(said, words) for said in study.messages)
    body += _volume_table(study, units, words) + _doubt_table(study.doubt, units, words)
    body += markup.facts(words(QT_TRANSLATE_NOOP("core", "What the doubt rests on")), _certainties(study, words))
    body += _map(study, units, words) + _histogram(study, units, words) + _classes_table(study, units, words)
    body += _regions_table(study, units, words) + _layers_table(study, units, words)
    body += _earth_table(study, units, words)
    body += "" if study.haul is None else haul_body(study.haul, units, words)
    return body + _checks(study, units, words)


def lead(study: Study, units: EarthUnits, words: Words) -> str:
    """The result in a sentence."""
    text = QT_TRANSLATE_NOOP(
        "core",
        "From {existing} to {design}: cut {cut} ± {cut_doubt} {unit}, fill {fill} ± {fill_doubt} {unit}, net {net} ± "
        "{net_doubt} {unit} (95 %), over {area} {area_unit} that both have.",
    )
    doubt = study.doubt
    return words(
        text,
        existing=study.existing_name,
        design=study.design_name,
        cut=units.volumes(doubt.cut.value),
        cut_doubt=units.doubts(doubt.cut.half_95),
        fill=units.volumes(doubt.fill.value),
        fill_doubt=units.doubts(doubt.fill.half_95),
        net=units.volumes(doubt.net.value),
        net_doubt=units.doubts(doubt.net.half_95),
        unit=units.volume,
        area=units.areas(study.volume.common_area),
        area_unit=units.area,
    )


# Numbers and their doubt


def _volume_table(study: Study, units: EarthUnits, words: Words) -> str:
    volume, doubt = study.volume, study.doubt
    rows = []
    for name, each, area in (
        (CUT, doubt.cut, volume.cut_area),
        (FILL, doubt.fill, volume.fill_area),
        (NET, doubt.net, volume.common_area),
    ):
        share = 100 * each.half_95 / abs(each.value) if each.value else math.nan
        mean = each.value / area if area > 0 else math.nan
        rows.append(
            (
                words(name),
                units.volumes(each.value),
                units.doubts(each.half_95),
                significant(share) if share < 1000 else NOT_KNOWN,
                units.areas(area),
                units.lengths(mean, 3),
            )
        )
    head = [
        "",
        words(QT_TRANSLATE_NOOP("core", "Volume ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "± 95 % ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "± 95 % (%)")),
        words(QT_TRANSLATE_NOOP("core", "Area ({unit})"), unit=units.area),
        words(QT_TRANSLATE_NOOP("core", "Mean depth ({unit})"), unit=units.length),
    ]
    table = markup.table(words(QT_TRANSLATE_NOOP("core", "Volumes")), head, rows, "hnnnnn")
    areas = [
        (QT_TRANSLATE_NOOP("core", "ground compared"), volume.common_area),
        (QT_TRANSLATE_NOOP("core", "of it unchanged"), volume.common_area - volume.cut_area - volume.fill_area),
        (QT_TRANSLATE_NOOP("core", "covered by the existing surface only, not compared"), volume.existing_only),
    ]
    if study.comparison.design_tin is not None:
        text = QT_TRANSLATE_NOOP("core", "covered by the design only, not compared")
        areas.append((text, volume.design_only))
    facts = [(words(name), f"{units.areas(max(0.0, area))} {units.area}") for name, area in areas]
    table += _steps_table(study, units, words) if study.two_surveys else ""
    level = study.comparison.missing_level
    if level is not None:
        text = QT_TRANSLATE_NOOP("core", "level in place of the surface that is missing")
        facts.append((words(text), f"{units.lengths(level, 3)} {units.length}"))
    return table + markup.facts(words(QT_TRANSLATE_NOOP("core", "Areas")), facts)


def _steps_table(study: Study, units: EarthUnits, words: Words) -> str:
    """From what the triangles say to what is told of two surveys."""
    doubt, kinds = study.doubt, ("cut", "fill", "net")
    told = [getattr(doubt, kind).value for kind in kinds]
    level, raw = ([getattr(volume, kind) for kind in kinds] for volume in (study.volume, study.measured))
    names_and_values = (
        (QT_TRANSLATE_NOOP("core", "triangles as they are"), raw),
        (QT_TRANSLATE_NOOP("core", "less the height offset between the surveys"), [b - a for a, b in zip(raw, level)]),
        (QT_TRANSLATE_NOOP("core", "less what noise makes of cut and fill"), [b - a for a, b in zip(level, told)]),
        (QT_TRANSLATE_NOOP("core", "told"), told),
    )
    rows = [(words(name), *(units.volumes(value) for value in values)) for name, values in names_and_values]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Volume ({unit})"), unit=units.volume),
        *(words(name) for name in (CUT, FILL, NET)),
    ]
    return markup.table(words(QT_TRANSLATE_NOOP("core", "From the triangles to the volumes told")), head, rows, "hnnn")


def _doubt_table(doubt: VolumeDoubt, units: EarthUnits, words: Words) -> str:
    def row(name: str, parts: Sequence[float]) -> Tuple[str, ...]:
        return (words(name), *(units.doubts(part) for part in parts))

    three: List[Doubt] = [doubt.cut, doubt.fill, doubt.net]
    rows = [
        row(QT_TRANSLATE_NOOP("core", "random: noise of single points"), [d.random for d in three]),
        row(QT_TRANSLATE_NOOP("core", "drift: what neighbouring points share"), [d.drift for d in three]),
        row(QT_TRANSLATE_NOOP("core", "systematic: height offset between the surfaces"), [d.systematic for d in three]),
        row(QT_TRANSLATE_NOOP("core", "surface model: ground between the points"), [d.model for d in three]),
        row(
            QT_TRANSLATE_NOOP("core", "small depths: noise where depths are no larger than it"),
            [d.small for d in three],
        ),
        row(QT_TRANSLATE_NOOP("core", "together (root of the sum of squares)"), [d.total for d in three]),
        row(QT_TRANSLATE_NOOP("core", "95 %: 1.96 times that"), [d.half_95 for d in three]),
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Standard deviation ({unit})"), unit=units.volume),
        *(words(name) for name in (CUT, FILL, NET)),
    ]
    return markup.table(words(QT_TRANSLATE_NOOP("core", "Where the doubt comes from")), head, rows, "hnnn")


def _certainties(study: Study, words: Words) -> List[Tuple[str, str]]:
    sides = [(study.existing_name, study.options.existing)]
    if study.comparison.design_tin is not None:
        sides.append((study.design_name, study.options.design))
    rows = [(name, _certainty(said, words)) for name, said in sides]
    if study.comparison.design_tin is None:
        rows.append((study.design_name, words(QT_TRANSLATE_NOOP("core", "exact"))))
    rows.append(_offset_row(study, words))
    return rows


def _offset_row(study: Study, words: Words) -> Tuple[str, str]:
    settling = study.settling
    if settling is None or settling.unchanged.given:
        text = QT_TRANSLATE_NOOP("core", "height offset between the surfaces, standard deviation")
        return words(text), f"{words.small.plain(study.options.offset_sigma)} {words.small.symbol}"
    text = QT_TRANSLATE_NOOP("core", "height offset between the surfaces, found from unchanged ground")
    said = QT_TRANSLATE_NOOP(
        "core",
        "{offset} {unit}, standard deviation {sigma} {unit} (of it random and drift above); noise there {scale} times "
        "as stated",
    )
    small, scale = words.small, plain(round(settling.size, 2))
    offset, sigma = (small.plain(value, 2) for value in (settling.unchanged.offset, settling.offset_sigma))
    return words(text), words(said, offset=offset, sigma=sigma, unit=small.symbol, scale=scale)


def _certainty(said: Certainty, words: Words) -> str:
    text = QT_TRANSLATE_NOOP(
        "core", "noise of a point's height {sigma} {unit}, drift {drift} {unit} ({within}), {ground}"
    )
    ground = QT_TRANSLATE_NOOP("core", "ground between the points judged from the surface's own roughness")
    within = QT_TRANSLATE_NOOP("core", "in order of the walk, else within {length}")
    if said.time is not None:
        within = QT_TRANSLATE_NOOP("core", "by the times of the points")
    if not said.ground:
        ground = QT_TRANSLATE_NOOP("core", "ground between the points as designed")
    return words(
        text,
        sigma=words.small.plain(said.sigma),
        drift=words.small.plain(said.drift),
        unit=words.small.symbol,
        within=words(within, length=words.given(said.drift_length)),
        ground=words(ground),
    )


# Pictures


def _map(study: Study, units: EarthUnits, words: Words) -> str:
    picture = depth_map(study, units, words)
    alt = QT_TRANSLATE_NOOP(
        "core", "Map of cut and fill by depth, with {count} lines of no cut and no fill and the rims of both surfaces."
    )
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Depth of cut (orange) and fill (purple), drawn from a grid of {cell}. Numbers come from the triangles.",
    )
    return markup.figure(
        picture.uri,
        words(alt, count=number(len(study.zero_lines))),
        words(caption, cell=words.given(study.grid.frame.cell)),
    )


def _histogram(study: Study, units: EarthUnits, words: Words) -> str:
    picture = depth_histogram(study, units, words)
    alt = QT_TRANSLATE_NOOP("core", "Histogram of the area by depth of cut and fill.")
    caption = QT_TRANSLATE_NOOP("core", "Area by depth: cut to the left of 0, fill to the right; exact for each bar.")
    return markup.figure(picture.uri, words(alt), words(caption))


def _classes_table(study: Study, units: EarthUnits, words: Words) -> str:
    rows = []
    for label, each in zip(class_labels(study.limits), study.depths):
        if each.area > 0:
            name = class_label(label, study.limits, units, words)
            rows.append((name, units.areas(each.area), units.volumes(each.volume)))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Depth")),
        words(QT_TRANSLATE_NOOP("core", "Area ({unit})"), unit=units.area),
        words(QT_TRANSLATE_NOOP("core", "Volume ({unit})"), unit=units.volume),
    ]
    caption = words(QT_TRANSLATE_NOOP("core", "By depth: all the earth moved where it is so deep"))
    return markup.table(caption, head, rows, "hnn") if rows else ""


# Regions, materials, earth


def _regions_table(study: Study, units: EarthUnits, words: Words) -> str:
    volumes = study.volumes
    if volumes is None:
        return ""
    rows = [_region_row(each.part.name, each.part, each.doubt, units) for each in study.regions]
    if volumes.outside.common_area > 0.005:
        rows.append(_region_row(words(OUTSIDE), volumes.outside, None, units))
    rows.append(_region_row(words(TOTAL), volumes.total, study.doubt, units))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Region")),
        *(
            words(text, unit=units.volume)
            for text in (
                QT_TRANSLATE_NOOP("core", "Cut ({unit})"),
                QT_TRANSLATE_NOOP("core", "± 95 %"),
                QT_TRANSLATE_NOOP("core", "Fill ({unit})"),
                QT_TRANSLATE_NOOP("core", "± 95 %"),
                QT_TRANSLATE_NOOP("core", "Net ({unit})"),
                QT_TRANSLATE_NOOP("core", "± 95 %"),
            )
        ),
        words(QT_TRANSLATE_NOOP("core", "Cut area ({unit})"), unit=units.area),
        words(QT_TRANSLATE_NOOP("core", "Fill area ({unit})"), unit=units.area),
        words(QT_TRANSLATE_NOOP("core", "Mean cut ({unit})"), unit=units.length),
        words(QT_TRANSLATE_NOOP("core", "Mean fill ({unit})"), unit=units.length),
        words(QT_TRANSLATE_NOOP("core", "Not compared ({unit})"), unit=units.area),
    ]
    caption = words(QT_TRANSLATE_NOOP("core", "By region"))
    return markup.table(caption, head, rows, "h" + "n" * 11)


def _region_row(name: str, part: PartVolume, doubt: Optional[VolumeDoubt], units: EarthUnits) -> Tuple[str, ...]:
    cells = [name]
    for kind in ("cut", "fill", "net"):
        value = getattr(part, kind) if doubt is None else getattr(doubt, kind).value
        cells.append(units.volumes(value))
        cells.append(NOT_KNOWN if doubt is None else units.doubts(getattr(doubt, kind).half_95))
    cells += [units.areas(part.cut_area), units.areas(part.fill_area)]
    told = (part.cut, part.fill) if doubt is None else (doubt.cut.value, doubt.fill.value)
    for value, area in zip(told, (part.cut_area, part.fill_area)):
        cells.append(units.lengths(value / area if area > 0 else math.nan))
    left = part.uncovered_area
    cells.append(NOT_KNOWN if math.isnan(left) else units.areas(max(0.0, left)))
    return tuple(cells)


def _layers_table(study: Study, units: EarthUnits, words: Words) -> str:
    if study.layers is None:
        return ""
    whole: LayerVolumes = study.layers
    several = [(each.part.name, each.layers) for each in study.regions if each.layers is not None]
    columns = [*several, (words(TOTAL), whole)]
    rows = [
        (layer.name, *(units.volumes(found.layers[i].cut) for _, found in columns))
        for i, layer in enumerate(whole.layers)
    ]
    unknown = words(QT_TRANSLATE_NOOP("core", "not known (a layer's surface is missing)"))
    rows.append((unknown, *(units.volumes(found.unknown) for _, found in columns)))
    rows.append((words(CUT), *(units.volumes(found.cut) for _, found in columns)))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Material ({unit} of cut)"), unit=units.volume),
        *(name for name, _ in columns),
    ]
    caption = words(QT_TRANSLATE_NOOP("core", "Cut by material"))
    return markup.table(caption, head, rows, "h" + "n" * len(columns))


def _earth_table(study: Study, units: EarthUnits, words: Words) -> str:
    earth, factors = study.earth, study.earth.factors
    rows: List[Tuple[str, str]] = []

    def add(text: str, cubic_metres: float) -> None:
        rows.append((words(text), f"{units.volumes(cubic_metres)} {units.volume}"))

    if study.stripped is not None:
        text = QT_TRANSLATE_NOOP("core", "topsoil, {depth} {unit} off {area} {area_unit}")
        depth, area = (
            plain(round(study.options.topsoil / units.unit.metres, 4)),
            units.areas(study.stripped.stripped_area),
        )
        name = words(text, depth=depth, unit=units.length, area=area, area_unit=units.area)
        rows.append((name, f"{units.volumes(study.stripped.topsoil)} {units.volume}"))
    add(QT_TRANSLATE_NOOP("core", "cut, as it lies in the ground"), earth.cut)
    if earth.unusable > 0:
        add(QT_TRANSLATE_NOOP("core", "of it not fit for fill"), earth.unusable)
    add(QT_TRANSLATE_NOOP("core", "fill, compacted"), earth.fill_compacted)
    add(QT_TRANSLATE_NOOP("core", "cut that this fill takes"), earth.fill_needs)
    add(QT_TRANSLATE_NOOP("core", "cut placed as fill"), earth.reused)
    add(QT_TRANSLATE_NOOP("core", "waste, as it lies in the ground"), earth.waste)
    add(QT_TRANSLATE_NOOP("core", "waste, loose on trucks"), earth.waste_loose)
    add(QT_TRANSLATE_NOOP("core", "borrow, as it lies in the ground"), earth.borrow)
    add(QT_TRANSLATE_NOOP("core", "borrow, loose on trucks"), earth.borrow_loose)
    if study.loads is not None and study.options.truck is not None:
        text = QT_TRANSLATE_NOOP("core", "loads of {load} {unit}: waste, borrow")
        load = plain(round(units.in_volume_unit(study.options.truck), 3))
        rows.append((words(text, load=load, unit=units.volume), f"{number(study.loads[0])}, {number(study.loads[1])}"))
    text = QT_TRANSLATE_NOOP("core", "factors: loose {loose}, compacted {compacted}, unusable share {unusable} %")
    rows.append(
        (
            words(
                text,
                loose=plain(factors.loose),
                compacted=plain(factors.compacted),
                unusable=plain(round(100 * factors.unusable, 3)),
            ),
            words(QT_TRANSLATE_NOOP("core", "as given")),
        )
    )
    caption = QT_TRANSLATE_NOOP("core", "What is done with the earth")
    if study.stripped is not None:
        caption = QT_TRANSLATE_NOOP("core", "What is done with the earth, once the topsoil is off")
    return markup.facts(words(caption), rows)


# Other methods


def _checks(study: Study, units: EarthUnits, words: Words) -> str:
    if not study.checks:
        return ""
    rows = []
    for check in study.checks:
        method = say_message(check.method, words)
        for name, found, exact, off in (
            (CUT, check.cut, check.exact_cut, check.cut_difference),
            (FILL, check.fill, check.exact_fill, check.fill_difference),
        ):
            share = 100 * off / exact if exact > 0 else math.nan
            cells = units.volumes(found), units.volumes(exact), units.volumes(off, 2), number(share, 3)
            rows.append((method, words(name), *cells))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Method")),
        "",
        words(QT_TRANSLATE_NOOP("core", "By it ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "Exact, same ground ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "Difference ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "Difference (%)")),
    ]
    caption = words(QT_TRANSLATE_NOOP("core", "The same by other methods"))
    text = words(
        QT_TRANSLATE_NOOP(
            "core",
            "The volumes of this page are exact for the two surfaces: every triangle of the one is cut along those of "
            "the other. Other methods take samples, so they differ:",
        )
    )
    whys = [f"{say_message(check.method, words)}: {say_message(check.why, words)}" for check in study.checks]
    return markup.table(caption, head, rows, "hwnnnn") + markup.paragraph(text) + markup.bullets(whys)
