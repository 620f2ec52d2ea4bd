"""What a basin holds, for people: numbers, curve and table on a page of its own."""

from __future__ import annotations

from typing import Any, Callable, List, Tuple

from ..earthwork.basin import Basin
from ..files import PathLike
from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .earth_units import earth_units
from .labels import Words, number
from .remarks import say_message
from .volume_figures import storage_curve
from .volume_page import write_page

TITLE = QT_TRANSLATE_NOOP("core", "Storage of a basin: {name}")
_ROWS = 25


def write_storage_page(
    basin: Basin, name: str, path: PathLike, translate: Callable[[str], str] = str, language: str = "en"
) -> None:
    """Write what a basin holds as an HTML page. Raises SurveyError when it cannot be written."""
    words = Words(translate)
    write_page(words(TITLE, name=name), storage_body(basin, words), path, words, language)


def storage_body(basin: Basin, words: Words) -> str:
    """The basin as HTML."""
    crs, storage = basin.tin.crs, basin.storage
    words = words.on(crs)
    units, rise = earth_units(crs, water=True), height_unit(crs)
    text = QT_TRANSLATE_NOOP(
        "core",
        "Filled to where it spills, {level} {rise}, the basin holds {volume} ± {half} {unit} (95 %) on {area} "
        "{area_unit}, {depth} {rise} deep at its pit.",
    )
    spill = storage.curve[-1]
    depth = (spill.level - storage.curve[0].level) / rise.metres
    body = markup.paragraph(
        words(
            text,
            level=number(spill.level / rise.metres, 3),
            rise=rise.symbol,
            volume=units.volumes(spill.volume),
            half=units.doubts(basin.doubt.half_95),
            unit=units.volume,
            area=units.areas(spill.area),
            area_unit=units.area,
            depth=number(depth, 3),
        )
    )
    body += markup.bullets(say_message(said, words) for said in storage.messages)
    body += markup.paragraph(words(HOLDS))
    picture = storage_curve(storage, crs, units, words)
    alt = QT_TRANSLATE_NOOP("core", "Curves of the water's area and volume by its level, from the pit to the spill.")
    caption = QT_TRANSLATE_NOOP("core", "Area and volume by level; the dashed line is the level at which water leaves.")
    body += markup.figure(picture.uri, words(alt), words(caption))
    return body + _places(basin, crs, words) + _doubts(basin, words) + _table(basin, words)


HOLDS = QT_TRANSLATE_NOOP(
    "core",
    "This is the shape of the ground only: it knows nothing of inflow, outlets, seepage or freeboard. A licensed "
    "engineer designs and approves storage by the rules of the place.",
)  # fmt: skip


def _places(basin: Basin, crs: Any, words: Words) -> str:
    plan, rise, storage = plan_unit(crs), height_unit(crs), basin.storage
    rows: List[Tuple[str, str]] = []
    for name, place in (
        (QT_TRANSLATE_NOOP("core", "pit"), storage.pit),
        (QT_TRANSLATE_NOOP("core", "where it spills"), storage.spill),
    ):
        east, north = (number(value / plan.metres, 2) for value in place[:2].tolist())
        text = f"E {east}  N {north}  {number(float(place[2]) / rise.metres, 3)} {rise.symbol}"
        rows.append((words(name), text))
    return markup.facts(words(QT_TRANSLATE_NOOP("core", "Places")), rows)


def _doubts(basin: Basin, words: Words) -> str:
    units, doubt = earth_units(basin.tin.crs, water=True), basin.doubt
    parts = [
        (QT_TRANSLATE_NOOP("core", "random: noise of single points"), doubt.random),
        (QT_TRANSLATE_NOOP("core", "drift: what neighbouring points share"), doubt.drift),
        (QT_TRANSLATE_NOOP("core", "spill level: noise of its height, times the area"), doubt.systematic),
        (QT_TRANSLATE_NOOP("core", "surface model: ground between the points"), doubt.model),
        (QT_TRANSLATE_NOOP("core", "together (root of the sum of squares)"), doubt.total),
    ]
    rows = [(words(name), f"{units.doubts(value)} {units.volume}") for name, value in parts]
    return markup.facts(words(QT_TRANSLATE_NOOP("core", "Standard deviations of what it holds")), rows)


def _table(basin: Basin, words: Words) -> str:
    units, rise, curve = earth_units(basin.tin.crs, water=True), height_unit(basin.tin.crs), basin.storage.curve
    step = max(1, -(-len(curve) // _ROWS))
    chosen = sorted({*range(0, len(curve), step), len(curve) - 1})
    low = curve[0].level
    rows = [
        (
            number(curve[i].level / rise.metres, 3),
            number((curve[i].level - low) / rise.metres, 3),
            units.areas(curve[i].area),
            units.volumes(curve[i].volume),
        )
        for i in chosen
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Level ({unit})"), unit=rise.symbol),
        words(QT_TRANSLATE_NOOP("core", "Above the pit ({unit})"), unit=rise.symbol),
        words(QT_TRANSLATE_NOOP("core", "Area ({unit})"), unit=units.area),
        words(QT_TRANSLATE_NOOP("core", "Volume ({unit})"), unit=units.volume),
    ]
    return markup.table(words(QT_TRANSLATE_NOOP("core", "Stage, area and volume")), head, rows, "nnnn")
