"""Cross-sections as QGIS features: lines with heights, their points, and the areas between two surfaces.

Geometry is in the unit of the CRS, heights too. Stations, offsets and heights in columns are in the line's unit.
"""

from __future__ import annotations

from typing import Any, List

import numpy as np
from qgis.core import QgsFeatureSink, QgsFields, QgsGeometry, QgsLineString, QgsPoint
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.areas import SectionAreas
from ..core.alignment.line import Alignment
from ..core.alignment.sections import Sections
from ..core.progress import Progress
from ..core.units import heights_to_crs_units, to_crs_units
from .roadlayers import Column, fields_with_aliases, or_null
from .sinks import add_feature, counted

translate = QCoreApplication.translate


def _head() -> List[Column]:
    return [
        ("section", "whole", translate("hummock", "Number of the cross-section")),
        ("station", "text", translate("hummock", "Station")),
        ("distance_m", "real", translate("hummock", "Distance along the line (m)")),
    ]


def section_fields(line: Alignment) -> QgsFields:
    unit = line.unit.symbol
    return fields_with_aliases(
        [
            *_head(),
            ("number", "whole", translate("hummock", "Number of the surface")),
            ("surface", "text", translate("hummock", "Surface")),
            ("part", "whole", translate("hummock", "Part of the section on the surface")),
            ("from_offset", "real", translate("hummock", "From offset, right positive ({unit})").format(unit=unit)),
            ("to_offset", "real", translate("hummock", "To offset ({unit})").format(unit=unit)),
        ]
    )


def write_section_lines(sections: Sections, crs: Any, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put each part of each section into ``sink``, from left to right."""
    metres = sections.line.unit.metres
    for k, head in enumerate(counted(_heads(sections), len(sections), progress)):
        for number, cut in enumerate(sections.cuts, 1):
            for part, (offset, height) in enumerate(cut.parts(k), 1):
                x, y = to_crs_units(section_places(sections, k, offset), crs).T.tolist()
                geometry = QgsGeometry(QgsLineString(x, y, heights_to_crs_units(height, crs).tolist()))
                row = [*head, number, cut.surface, part, float(offset[0] / metres), float(offset[-1] / metres)]
                add_feature(sink, geometry, row)


def section_places(sections: Sections, number: int, offset: np.ndarray) -> np.ndarray:
    """Coordinates (q, 2) in metres of offsets (q,) of a section."""
    left, right = float(sections.left[number]), float(sections.right[number])
    first, last = sections.ends[number]
    return first + ((offset + left) / (left + right))[:, None] * (last - first)


def section_point_fields(line: Alignment) -> QgsFields:
    unit = line.unit.symbol
    return fields_with_aliases(
        [
            *_head(),
            ("number", "whole", translate("hummock", "Number of the surface")),
            ("surface", "text", translate("hummock", "Surface")),
            ("part", "whole", translate("hummock", "Part of the section on the surface")),
            ("offset", "real", translate("hummock", "Offset, right positive ({unit})").format(unit=unit)),
            ("height", "real", translate("hummock", "Height ({unit})").format(unit=unit)),
            ("easting", "real", translate("hummock", "Easting (unit of the CRS)")),
            ("northing", "real", translate("hummock", "Northing (unit of the CRS)")),
        ]
    )


def write_section_points(sections: Sections, crs: Any, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put every vertex of every section into ``sink``."""
    metres = sections.line.unit.metres
    for k, head in enumerate(counted(_heads(sections), len(sections), progress)):
        for number, cut in enumerate(sections.cuts, 1):
            for part, (offset, height) in enumerate(cut.parts(k), 1):
                plan = to_crs_units(section_places(sections, k, offset), crs).tolist()
                rise = heights_to_crs_units(height, crs).tolist()
                shown = zip((offset / metres).tolist(), (height / metres).tolist())
                for place, z, values in zip(plan, rise, shown):
                    row = [*head, number, cut.surface, part, *values, *place]
                    add_feature(sink, QgsGeometry(QgsPoint(*place, z)), row)


def area_fields(line: Alignment) -> QgsFields:
    square, unit = line.unit.symbol + "²", line.unit.symbol
    deviation = translate("hummock", "Its standard deviation ({unit})").format(unit=square)
    return fields_with_aliases(
        [
            *_head(),
            ("cut", "real", translate("hummock", "Cut, second surface below ({unit})").format(unit=square)),
            ("cut_sd", "real", deviation),
            ("fill", "real", translate("hummock", "Fill, second surface above ({unit})").format(unit=square)),
            ("fill_sd", "real", deviation),
            ("net", "real", translate("hummock", "Fill less cut ({unit})").format(unit=square)),
            ("net_sd", "real", deviation),
            ("covered", "real", translate("hummock", "Width with both surfaces ({unit})").format(unit=unit)),
            ("width", "real", translate("hummock", "Width of the section ({unit})").format(unit=unit)),
        ]
    )


def write_areas(sections: Sections, areas: SectionAreas, sink: QgsFeatureSink) -> None:
    """Put the areas of every section into ``sink``, which has no geometry."""
    metres = sections.line.unit.metres
    columns = [areas.cut, areas.cut_sigma, areas.fill, areas.fill_sigma, areas.fill - areas.cut, areas.net_sigma]
    table = np.column_stack(columns) / metres**2
    widths = np.column_stack([areas.covered, sections.left + sections.right]) / metres
    for k, head in enumerate(_heads(sections)):
        add_feature(sink, QgsGeometry(), [*head, *(or_null(v) for v in (*table[k], *widths[k]))])


def _heads(sections: Sections) -> List[List[Any]]:
    """Number, station and distance of each section."""
    return [[k, sections.line.label(d), d] for k, d in enumerate(sections.distance.tolist(), 1)]
