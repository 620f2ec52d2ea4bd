"""What is found along a line as QGIS features: stations, profiles, slopes, curves, stretches, indications.

Geometry is in the unit of the CRS, heights too. Stations, offsets and heights in columns are in the line's unit;
columns in metres end in ``_m``, those in percent in ``_pct``. Cross-sections are in :mod:`.sectionlayers`.
"""

from __future__ import annotations

from math import isfinite
from typing import Any, List, Optional, Sequence, Tuple

import numpy as np
from qgis.core import QgsFeatureSink, QgsField, QgsFields, QgsGeometry, QgsLineString, QgsPoint
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.checks import CheckResult
from ..core.alignment.curves import FittedProfile
from ..core.alignment.grades import WindowSlopes
from ..core.alignment.indications import Gutter, KerbFlows
from ..core.alignment.line import Alignment
from ..core.alignment.parts import Part, PartSlopes
from ..core.alignment.profile import HeightLine, Profile
from ..core.alignment.rules import Quantity
from ..core.surface.slopes import class_range, slope_classes
from ..core.units import heights_to_crs_units, to_crs_units
from .sinks import add_feature
from .slopemap import range_label
from .versions import field

translate = QCoreApplication.translate

#: Name, kind (see :func:`versions.field`) and alias of a column.
Column = Tuple[str, str, str]


def fields_with_aliases(columns: Sequence[Column]) -> QgsFields:
    fields = QgsFields()
    for name, kind, alias in columns:
        own = field(name, kind)
        own.setAlias(alias)
        fields.append(own)
    return fields


def plain(fields: QgsFields) -> QgsFields:
    """The same without aliases, which newer QGIS warns of one by one where a file cannot hold them, such as CSV."""
    found = QgsFields()
    for own in fields:
        bare = QgsField(own)
        bare.setAlias("")
        found.append(bare)
    return found


def or_null(value: float) -> Optional[float]:
    return float(value) if isfinite(value) else None


def ends_columns() -> List[Column]:
    return [
        ("from_station", "text", translate("hummock", "From station")),
        ("to_station", "text", translate("hummock", "To station")),
        ("from_m", "real", translate("hummock", "From (m along the line)")),
        ("to_m", "real", translate("hummock", "To (m along the line)")),
    ]


def ends_of(line: Alignment, begin: float, end: float) -> List[Any]:
    return [line.label(begin), line.label(end), float(begin), float(end)]


def between(line: Alignment, begin: float, end: float, crs: Any, offset: float = 0.0) -> QgsGeometry:
    """A part of the line, in the unit of the CRS."""
    x, y = to_crs_units(line.between(begin, end, offset), crs).T.tolist()
    return QgsGeometry(QgsLineString(x, y))


def point_at(line: Alignment, distance: float, height: float, crs: Any, offset: float = 0.0) -> QgsGeometry:
    """A place of the line with its height (m; 0 where it is not known), in the unit of the CRS."""
    x, y = to_crs_units(line.places(np.array([distance]), offset)[0], crs).tolist()
    z = float(heights_to_crs_units(height, crs)) if isfinite(height) else 0.0
    return QgsGeometry(QgsPoint(x, y, z))


#: How far beside the line, metres, right positive, the crossfalls of each part of a lane are drawn.
BESIDE = {Part.LANE: 0.0, Part.LEFT: -1.0, Part.RIGHT: 1.0}


# Stations and profile


def station_fields(line: Alignment, surfaces: int) -> QgsFields:
    unit = line.unit.symbol
    columns = [
        ("station", "text", translate("hummock", "Station")),
        ("distance_m", "real", translate("hummock", "Distance along the line (m)")),
        ("easting", "real", translate("hummock", "Easting (unit of the CRS)")),
        ("northing", "real", translate("hummock", "Northing (unit of the CRS)")),
        ("height", "real", translate("hummock", "Height ({unit})").format(unit=unit)),
        ("height_sd", "real", translate("hummock", "Its standard deviation ({unit})").format(unit=unit)),
        ("grade_pct", "real", translate("hummock", "Grade along the line (%)")),
        ("grade_sd_pct", "real", translate("hummock", "Its standard deviation (%)")),
    ]
    for k in range(2, surfaces + 1):
        height = translate("hummock", "Height of surface {number} ({unit})").format(number=k, unit=unit)
        less = translate("hummock", "Surface {number} less the first ({unit})").format(number=k, unit=unit)
        columns += [(f"height_{k}", "real", height), (f"diff_{k}", "real", less)]
    return fields_with_aliases(columns)


def write_stations(
    profile: Profile, stations: np.ndarray, deviation: np.ndarray, slopes: Sequence[np.ndarray], crs: Any,
    sink: QgsFeatureSink,
) -> None:  # fmt: skip
    """Put points at ``stations`` (s,) metres into ``sink``, with the heights of all surfaces, the ``deviation`` (s,)
    of the first (m), and value and sigma of the grade (``slopes``)."""
    line = profile.line
    heights = [own.heights(stations) for own in profile.surfaces]
    places = to_crs_units(line.places(stations), crs)
    grade, doubt = slopes
    for k, distance in enumerate(stations.tolist()):
        values = [heights[0][k] / line.unit.metres, deviation[k] / line.unit.metres, 100 * grade[k], 100 * doubt[k]]
        for other in heights[1:]:
            values += [other[k] / line.unit.metres, (other[k] - heights[0][k]) / line.unit.metres]
        row = [line.label(distance), distance, *places[k].tolist(), *(or_null(v) for v in values)]
        add_feature(sink, point_at(line, distance, heights[0][k], crs), row)


def profile_fields(line: Alignment) -> QgsFields:
    unit = line.unit.symbol
    return fields_with_aliases(
        [
            ("number", "whole", translate("hummock", "Number of the surface")),
            ("surface", "text", translate("hummock", "Surface")),
            ("lowest", "real", translate("hummock", "Lowest height ({unit})").format(unit=unit)),
            ("highest", "real", translate("hummock", "Highest height ({unit})").format(unit=unit)),
        ]
    )


def write_profile_lines(profile: Profile, exaggeration: float, sink: QgsFeatureSink) -> None:
    """Put each part of each surface into ``sink`` as a line in a plane of its own: distance along the line to the
    right, height times ``exaggeration`` upwards, both in the line's unit."""
    metres = profile.line.unit.metres
    for number, own in enumerate(profile.surfaces, 1):
        for distance, height in own.parts():
            x, y = (distance / metres).tolist(), (height / metres * exaggeration).tolist()
            low, high = float(height.min() / metres), float(height.max() / metres)
            add_feature(sink, QgsGeometry(QgsLineString(x, y)), [number, own.surface, low, high])


# Slopes by window


def slope_fields() -> QgsFields:
    return fields_with_aliases(
        [
            *ends_columns(),
            ("slope_pct", "real", translate("hummock", "Slope (%)")),
            ("slope_sd_pct", "real", translate("hummock", "Its standard deviation (%)")),
            ("class", "whole", translate("hummock", "Class of slope (from 0)")),
            ("label", "text", translate("hummock", "Class")),
        ]
    )


def crossfall_fields(line: Alignment) -> QgsFields:
    fields = slope_fields()
    unit = line.unit.symbol
    for one in fields_with_aliases(
        [
            ("part", "text", translate("hummock", "Part of the lane: lane, left, right")),
            ("crown", "real", translate("hummock", "Crown, right of the line ({unit})").format(unit=unit)),
        ]
    ):
        fields.append(one)
    return fields


def write_crossfalls(slopes: PartSlopes, limits: Sequence[float], crs: Any, sink: QgsFeatureSink) -> None:
    """Put the stretch of each window into ``sink``, for each part of the lane that it has."""
    crown = slopes.crown / slopes.line.unit.metres
    for part, own in slopes.by.items():
        more = [[part.value, or_null(crown[k])] for k in range(len(slopes))]
        write_slopes(own, limits, crs, sink, BESIDE[part], slopes.has(part), more)


def write_slopes(
    slopes: WindowSlopes, limits: Sequence[float], crs: Any, sink: QgsFeatureSink, offset: float = 0.0,
    some: Optional[np.ndarray] = None, more: Optional[List[List[Any]]] = None,
) -> None:  # fmt: skip
    """Put the stretch of each window of mask ``some`` (w,) into ``sink``, ``offset`` metres beside the line, with
    ``more`` values of each; the class is by the size of the slope.
    """
    number = slope_classes(np.abs(slopes.value), limits)
    for k, (begin, end) in enumerate(slopes.stretch.tolist()):
        if some is not None and not some[k]:
            continue
        known = isfinite(slopes.value[k])
        own = [int(number[k]), range_label(*class_range(limits, int(number[k])))] if known else [None, None]
        values = [or_null(100 * slopes.value[k]), or_null(100 * slopes.sigma[k])]
        row = [*ends_of(slopes.line, begin, end), *values, *own, *(more[k] if more is not None else ())]
        add_feature(sink, between(slopes.line, begin, end, crs, offset), row)


# Grades and vertical curves


def curve_fields(line: Alignment) -> QgsFields:
    unit = line.unit.symbol
    return fields_with_aliases(
        [
            ("kind", "text", translate("hummock", "Kind: grade, crest or sag")),
            *ends_columns(),
            ("length", "real", translate("hummock", "Length ({unit})").format(unit=unit)),
            ("grade_pct", "real", translate("hummock", "Grade, of a curve the one it begins with (%)")),
            ("grade_sd_pct", "real", translate("hummock", "Standard deviation of the grade (%)")),
            ("end_grade_pct", "real", translate("hummock", "Grade at the end (%)")),
            ("k", "real", translate("hummock", "K ({unit} for each percent)").format(unit=unit)),
            ("k_sd", "real", translate("hummock", "Standard deviation of K ({unit}/%)").format(unit=unit)),
            ("turn_station", "text", translate("hummock", "Station of the highest or lowest place")),
            ("label", "text", translate("hummock", "Label")),
        ]
    )


def write_curves(line: Alignment, fit: FittedProfile, crs: Any, sink: QgsFeatureSink) -> None:
    """Put grades and curves into ``sink`` in the order of the line."""
    metres = line.unit.metres
    for k, grade in enumerate(fit.grades):
        percent = 100 * grade.grade
        row = ["grade", *ends_of(line, grade.begin, grade.end), (grade.end - grade.begin) / metres, percent]
        row += [100 * grade.sigma, percent, None, None, None, f"{percent:+.2f} %"]
        add_feature(sink, between(line, grade.begin, grade.end, crs), row)
        if k == len(fit.curves):
            break
        curve = fit.curves[k]
        kind = "crest" if curve.crest else "sag"
        row = [kind, *ends_of(line, curve.begin, curve.end), curve.length / metres, 100 * curve.grade_before, None]
        turn = None if curve.extreme is None else line.label(curve.extreme)
        label = f"K {curve.k / metres:.1f} {line.unit.symbol}/%" if curve.determined else ""
        known = [curve.k / metres, curve.k_sigma / metres] if curve.determined else [None, None]
        row += [100 * curve.grade_after, *known, turn, label]
        add_feature(sink, between(line, curve.begin, curve.end, crs), row)


def meeting_fields(line: Alignment) -> QgsFields:
    unit = line.unit.symbol
    return fields_with_aliases(
        [
            ("number", "whole", translate("hummock", "Number of the curve")),
            ("station", "text", translate("hummock", "Station where the grades meet")),
            ("distance_m", "real", translate("hummock", "Distance along the line (m)")),
            ("height", "real", translate("hummock", "Height where they meet ({unit})").format(unit=unit)),
            ("change_pct", "real", translate("hummock", "Change of grade (%)")),
            ("length", "real", translate("hummock", "Length of the curve ({unit})").format(unit=unit)),
            ("k", "real", translate("hummock", "K ({unit} for each percent)").format(unit=unit)),
        ]
    )


def write_meetings(line: Alignment, fit: FittedProfile, crs: Any, sink: QgsFeatureSink) -> None:
    """Put the places where two grades meet into ``sink``."""
    metres = line.unit.metres
    for number, curve in enumerate(fit.curves, 1):
        change = 100 * (curve.grade_after - curve.grade_before)
        row = [number, line.label(curve.meeting), curve.meeting, curve.meeting_height / metres, change]
        row += [curve.length / metres, curve.k / metres if curve.determined else None]
        add_feature(sink, point_at(line, curve.meeting, curve.meeting_height, crs), row)


def residual_fields(line: Alignment) -> QgsFields:
    unit = line.unit.symbol
    return fields_with_aliases(
        [
            ("station", "text", translate("hummock", "Station")),
            ("distance_m", "real", translate("hummock", "Distance along the line (m)")),
            ("height", "real", translate("hummock", "Height of the surface ({unit})").format(unit=unit)),
            ("fit", "real", translate("hummock", "Height of grades and curves ({unit})").format(unit=unit)),
            ("residual_m", "real", translate("hummock", "Surface less fit (m)")),
        ]
    )


def write_residuals(line: Alignment, own: HeightLine, fit: FittedProfile, crs: Any, sink: QgsFeatureSink) -> None:
    """Put every height that was fitted into ``sink``."""
    metres, smooth = line.unit.metres, fit.heights(fit.distance)
    for distance, height, residual in zip(fit.distance.tolist(), smooth.tolist(), fit.residual.tolist()):
        row = [line.label(distance), distance, (height + residual) / metres, height / metres, residual]
        add_feature(sink, point_at(line, distance, height + residual, crs), row)


# Checks and indications


def check_fields() -> QgsFields:
    return fields_with_aliases(
        [
            ("rule_no", "whole", translate("hummock", "Number of the rule")),
            ("rule", "text", translate("hummock", "Rule")),
            ("quantity", "text", translate("hummock", "Quantity")),
            ("part", "text", translate("hummock", "Part of the lane: lane, left, right")),
            ("limit", "text", translate("hummock", "Limit")),
            *ends_columns(),
            ("verdict", "text", translate("hummock", "Verdict at 95 %")),
            ("value", "real", translate("hummock", "Value nearest to or farthest beyond the limit")),
            ("value_sd", "real", translate("hummock", "Its standard deviation")),
            ("unit", "text", translate("hummock", "Unit of the value")),
            ("at_station", "text", translate("hummock", "Station of the value")),
            ("applies", "text", translate("hummock", "Where the rule applies")),
            ("source", "text", translate("hummock", "Source of the limit")),
        ]
    )


def write_checks(checks: CheckResult, crs: Any, sink: QgsFeatureSink) -> None:
    """Put every stretch of every rule into ``sink``; values are in percent, K in metres a percent."""
    number = {rule: k for k, rule in enumerate(dict.fromkeys(each.rule for each in checks.stretches), 1)}
    for each in checks.stretches:
        rule = each.rule
        slope = rule.quantity in (Quantity.GRADE, Quantity.CROSSFALL)
        factor, unit = (100.0, "%") if slope else (1.0, "m/%")
        limit = ("≥ " if rule.at_least else "≤ ") + rule.limit_text
        across = rule.quantity is Quantity.CROSSFALL
        row = [number[rule], rule.name, rule.quantity.value, each.part.value if across else None]
        row += [limit, *ends_of(checks.line, each.begin, each.end)]
        row += [each.verdict.value, or_null(factor * each.value), or_null(factor * each.sigma), unit]
        row += [checks.line.label(each.at), "always" if rule.condition is None else rule.condition.text, rule.source]
        add_feature(sink, between(checks.line, each.begin, each.end, crs), row)


def flow_fields() -> QgsFields:
    return fields_with_aliases(
        [
            *ends_columns(),
            ("flow", "text", translate("hummock", "Water runs to: left, right, both, neither, unsure")),
            ("left_pct", "real", translate("hummock", "Fall to the left edge (%)")),
            ("left_sd_pct", "real", translate("hummock", "Its standard deviation (%)")),
            ("right_pct", "real", translate("hummock", "Fall to the right edge (%)")),
            ("right_sd_pct", "real", translate("hummock", "Its standard deviation (%)")),
        ]
    )


def write_flows(flows: KerbFlows, crs: Any, sink: QgsFeatureSink) -> None:
    """Put windows into ``sink`` with where their crossfall leads water."""
    left, right = flows.left.slopes, flows.right.slopes
    for k, (begin, end) in enumerate(left.stretch.tolist()):
        values = [100 * each[k] for own in (left, right) for each in (own.value, own.sigma)]
        row = [*ends_of(left.line, begin, end), flows.flow[k].value, *(or_null(v) for v in values)]
        add_feature(sink, between(left.line, begin, end, crs), row)


def low_point_fields(line: Alignment) -> QgsFields:
    return fields_with_aliases(
        [
            ("offset", "real", translate("hummock", "Offset, right positive ({unit})").format(unit=line.unit.symbol)),
            ("station", "text", translate("hummock", "Station of the lowest place")),
            ("sill_station", "text", translate("hummock", "Station of the sill")),
            ("depth_m", "real", translate("hummock", "Depth below the sill (m)")),
            ("depth_sd_m", "real", translate("hummock", "Its standard deviation (m)")),
            ("length_m", "real", translate("hummock", "Length of the water along the line (m)")),
        ]
    )


def write_low_points(line: Alignment, gutters: Sequence[Gutter], crs: Any, sink: QgsFeatureSink) -> int:
    """Put the low points of gutters into ``sink``; returns how many."""
    count = 0
    for gutter in gutters:
        for low in gutter.low_points:
            row = [gutter.offset / line.unit.metres, line.label(low.at), line.label(low.sill), low.depth]
            row += [or_null(low.sigma), low.end - low.begin]
            add_feature(sink, point_at(line, low.at, float("nan"), crs, gutter.offset), row)
            count += 1
    return count
