"""What the volume algorithms have in common: options of a comparison, its outputs, and writing them."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterRasterDestination,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.depth_polygons import UNCHANGED
from ..core.earthwork.study import Certainty, Study, StudyOptions
from ..core.georeference.crs import plan_unit
from ..core.progress import silent
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, metres_per_unit
from .algorithm import HummockAlgorithm, page_language, report
from .certainty import first_certainty, given_offset, offset_sigma, second_certainty
from .depthstyles import dress_depth_raster, dress_depths
from .drawnsource import parts_of
from .earthmaterials import chosen_earth
from .geotiff import raster_of, write_geotiff
from .localnumbers import shown
from .parameters import number, optional_source, qgis_crs
from .slopemap import read_limits
from .styles import ZERO_LINE, dress_vector
from .surfaceinput import same_crs
from .versions import LINE_SOURCE, LINE_Z, MULTIPOLYGON, NO_GEOMETRY, POLYGON_SOURCE, TABLE_SOURCE
from .volumelayers import (
    class_fields,
    volume_fields,
    write_depth_polygons,
    write_volumes,
    write_zero_lines,
    zero_line_fields,
)
from .volumenumbers import study_numbers

translate = QCoreApplication.translate

# Parameters


def add_depth_options(algorithm: HummockAlgorithm) -> None:
    """LIMITS, CELL, and for the check by sections LINE, STEP and HALF_WIDTH."""
    algorithm.add(
        QgsProcessingParameterString(
            "LIMITS", translate("hummock", "Depth classes (m; empty: round ones)"), "", optional=True
        ),
        translate("hummock", "Rising depths such as 0.1; 0.25; 0.5; 1, used for cut and for fill."),
    )
    algorithm.add(
        number("CELL", translate("hummock", "Cell size of the depth raster (in the unit of the CRS)"), 0.5, 1e-6),
        translate("hummock", "For the raster and the check by a grid only; volumes do not depend on it."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "LINE", translate("hummock", "Line for sections (check by other methods)"), [LINE_SOURCE], optional=True
        ),
        translate(
            "hummock",
            "Along its first feature the volume is also told by average end areas and by the prismoidal formula, in "
            "the HTML report.",
        ),
        advanced=True,
    )
    algorithm.add(
        number("STEP", translate("hummock", "Distance of the sections (m)"), 10.0, 0.01),
        translate("hummock", "From section to section along the line."),
        advanced=True,
    )
    algorithm.add(
        number("HALF_WIDTH", translate("hummock", "Sections reach to each side (m)"), 20.0, 0.01),
        translate("hummock", "What lies beyond is not in that check."),
        advanced=True,
    )


def add_depth_outputs(algorithm: HummockAlgorithm) -> None:
    """POLYGONS, ZERO_LINE, RASTER and HTML."""
    algorithm.add(
        QgsProcessingParameterFeatureSink(
            "POLYGONS", translate("hummock", "Depth of cut and fill (polygons)"), POLYGON_SOURCE, optional=True
        ),
        translate("hummock", "A feature for each class of depth that occurs, with its exact area and volume."),
    )
    algorithm.add(
        QgsProcessingParameterFeatureSink(
            "ZERO_LINE", translate("hummock", "Lines of no cut and no fill"), LINE_SOURCE, optional=True
        ),
        translate("hummock", "Where the surfaces cross, with the height there."),
    )
    algorithm.add(
        QgsProcessingParameterRasterDestination(
            "RASTER", translate("hummock", "Depth (GeoTIFF)"), optional=True, createByDefault=False
        ),
        translate("hummock", "Design less existing height at the cell middles, in the unit of the CRS; fill above 0."),
    )
    add_html_output(algorithm)


def add_html_output(algorithm: HummockAlgorithm) -> None:
    algorithm.add_page(
        "HTML",
        translate("hummock", "Report (HTML)"),
        translate("hummock", "One page with numbers, doubt, map, histogram, other methods and cautions."),
        made=False,
    )


def add_table_output(algorithm: HummockAlgorithm, label: str = "") -> None:
    algorithm.add(
        QgsProcessingParameterFeatureSink(
            "TABLE", label or translate("hummock", "Volumes"), TABLE_SOURCE, optional=True
        ),
        translate(
            "hummock",
            "Rows of cut, fill and net (m³) with the ends of the 95 % interval and the standard deviations apart: "
            "random, drift, systematic, surface model and small depths. triangles_m3 is what the triangles say.",
        ),
    )


# What was chosen


def chosen_limits(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[Tuple[float, ...]]:
    """Depth limits (m), None for round ones."""
    text = algorithm.parameterAsString(parameters, "LIMITS", context).strip()
    return tuple(read_limits(text)) if text else None


def chosen_line(
    algorithm: HummockAlgorithm, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[np.ndarray]:
    """The first line (k, 2) of LINE in metres, None where none was given."""
    source = optional_source(algorithm, parameters, "LINE", context)
    if source is None:
        return None
    label = source.sourceName() or "LINE"
    same_crs(source, tin, label)
    for feature in source.getFeatures():
        if not feature.geometry().isNull():
            return np.asarray(parts_of(feature.geometry(), False)[0][:, :2] * metres_per_unit(tin.crs))
    raise QgsProcessingException(
        translate("hummock", "{layer}: there is no line in it; draw one or leave it out.").format(layer=label)
    )


def chosen_study(
    algorithm: HummockAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    design: Optional[Tin] = None,
    second: bool = True,
) -> StudyOptions:
    """What the parameters ask about a comparison of ``tin`` with the surface ``design``, or a plane for None.

    ``second``: whether the algorithm asks for two surfaces.
    """
    earth = chosen_earth(algorithm, parameters, context)
    return StudyOptions(
        existing=first_certainty(algorithm, tin, parameters, context, feedback, "EXISTING" if second else "INPUT"),
        design=Certainty() if design is None else second_certainty(algorithm, design, parameters, context, feedback),
        offset_sigma=offset_sigma(algorithm, parameters, context),
        offset=given_offset(algorithm, parameters, context) if second else None,
        limits=chosen_limits(algorithm, parameters, context),
        factors=earth.factors,
        truck=earth.truck,
        topsoil=earth.topsoil,
        cell=algorithm.parameterAsDouble(parameters, "CELL", context) * metres_per_unit(tin.crs),
        line=chosen_line(algorithm, tin, parameters, context),
        step=algorithm.parameterAsDouble(parameters, "STEP", context),
        half_width=algorithm.parameterAsDouble(parameters, "HALF_WIDTH", context),
        drawn=any(parameters.get(name) for name in ("POLYGONS", "ZERO_LINE", "HTML")),
    )


# Results


def class_texts(study: Study) -> Dict[int, str]:
    """What the legend calls each class, by its number."""
    found = {UNCHANGED: translate("hummock", "unchanged")}
    unit = plan_unit(study.comparison.existing.crs)
    steps, symbol = [limit / unit.metres for limit in (0.0, *study.limits)], unit.symbol
    for size in range(1, len(steps) + 1):
        low = f"{steps[size - 1]:.4g}"
        if size == len(steps):
            found[size] = translate("hummock", "fill over {low} {unit}").format(low=low, unit=symbol)
            found[-size] = translate("hummock", "cut over {low} {unit}").format(low=low, unit=symbol)
        else:
            high = f"{steps[size]:.4g}"
            found[size] = translate("hummock", "fill {low} to {high} {unit}").format(low=low, high=high, unit=symbol)
            found[-size] = translate("hummock", "cut {low} to {high} {unit}").format(low=low, high=high, unit=symbol)
    return found


def classes_of(study: Study) -> List[int]:
    """Numbers of the classes in the order of ``study.depths``."""
    count = len(study.limits) + 1
    return [*range(-count, 0), *range(1, count + 1)]


def tell(study: Study, feedback: QgsProcessingFeedback) -> None:
    """The numbers and what is to be known with them, in the log."""
    report(study.messages, feedback)
    texts = {
        "cut": translate("hummock", "Cut {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m²."),
        "fill": translate("hummock", "Fill {value:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m²."),
        "net": translate("hummock", "Fill less cut {value:.2f} ± {half:.2f} m³ (95 %); {area:.1f} m² compared."),
    }
    areas = {"cut": study.volume.cut_area, "fill": study.volume.fill_area, "net": study.volume.common_area}
    for name, text in texts.items():
        doubt = getattr(study.doubt, name)
        feedback.pushInfo(shown(text, value=doubt.value, half=doubt.half_95, area=areas[name]))
    if study.two_surveys:
        raw = study.measured
        text = translate(
            "hummock", "The triangles as they are: cut {cut:.2f} m³, fill {fill:.2f} m³, fill less cut {net:.2f} m³."
        )
        feedback.pushInfo(shown(text, cut=raw.cut, fill=raw.fill, net=raw.net))
    feedback.pushInfo(
        translate(
            "hummock",
            "Not a payment certificate: the contract says what is measured and by whom. Locate buried services before "
            "anyone digs.",
        )
    )
    earth, options = study.earth, study.options
    if options.topsoil > 0 and study.stripped is not None:
        feedback.pushInfo(
            shown(
                translate("hummock", "Topsoil {volume:.1f} m³ off {area:.1f} m²."),
                volume=study.stripped.topsoil,
                area=study.stripped.stripped_area,
            )
        )
    feedback.pushInfo(
        shown(
            translate(
                "hummock",
                "Waste {waste:.1f} m³ ({waste_loose:.1f} m³ loose), borrow {borrow:.1f} m³ ({borrow_loose:.1f} "
                "m³ loose).",
            ),
            waste=earth.waste,
            waste_loose=earth.waste_loose,
            borrow=earth.borrow,
            borrow_loose=earth.borrow_loose,
        )
    )
    if study.loads is not None:
        feedback.pushInfo(
            translate("hummock", "Loads: {waste} of waste, {borrow} of borrow.").format(
                waste=study.loads[0], borrow=study.loads[1]
            )
        )


def write_results(
    algorithm: HummockAlgorithm, study: Study, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Dict[str, Any]:
    """The outputs of :func:`add_depth_outputs` that are wanted, and the numbers."""
    tin = study.comparison.existing
    crs = qgis_crs(tin.crs)
    results: Dict[str, Any] = dict(study_numbers(study))
    texts, numbers = class_texts(study), classes_of(study)
    classes = len(study.limits) + 1
    sink, place = algorithm.parameterAsSink(parameters, "POLYGONS", context, class_fields(), MULTIPOLYGON, crs)
    if sink is not None:
        write_depth_polygons(study.polygons, dict(zip(numbers, study.depths)), texts, tin.crs, sink)
        met = sorted({polygon.label for polygon in study.polygons})
        dress_depths(context, place, [(each, texts[each]) for each in met], classes)
        results["POLYGONS"] = place
    sink, place = algorithm.parameterAsSink(parameters, "ZERO_LINE", context, zero_line_fields(), LINE_Z, crs)
    if sink is not None:
        write_zero_lines(study.zero_lines, tin.crs, sink)
        dress_vector(context, place, ZERO_LINE)
        results["ZERO_LINE"] = place
    path = algorithm.parameterAsOutputLayer(parameters, "RASTER", context)
    if path:
        _write_raster(study, path)
        edges = [*(-limit for limit in reversed(study.limits)), 0.0, *study.limits, float("inf")]
        unit = 1.0 / float(heights_to_crs_units(1.0, tin.crs))
        dress_depth_raster(context, path, [(e / unit, texts[n], n) for e, n in zip(edges, numbers)], classes)
        results["RASTER"] = path
    path = algorithm.parameterAsFileOutput(parameters, "HTML", context)
    if path:
        from ..core.report.volume_page import write_volume_page  # brings matplotlib, for which QGIS need not wait

        write_volume_page(study, path, *page_language())
        results["HTML"] = path
    return results


def write_table(
    algorithm: HummockAlgorithm, study: Study, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Dict[str, Any]:
    """TABLE, where it is wanted: cut, fill and net of each region and of the whole."""
    sink, place = algorithm.parameterAsSink(parameters, "TABLE", context, volume_fields(), NO_GEOMETRY)
    if sink is None:
        return {}
    for each in study.regions:
        part = each.part
        areas = (part.cut_area, part.fill_area, part.common_area)
        write_volumes(part.name, each.doubt, areas, sink, each.measured)
    volume = study.volume
    whole = translate("hummock", "all of the ground compared")
    areas = (volume.cut_area, volume.fill_area, volume.common_area)
    write_volumes(whole, study.doubt, areas, sink, study.measured)
    return {"TABLE": place}


def check_raster_path(path: str) -> None:
    """Refuse (QgsProcessingException) a raster that is no GeoTIFF before anything is computed."""
    if path and Path(path).suffix.lower() not in (".tif", ".tiff"):
        raise QgsProcessingException(
            translate("hummock", "{file}: this makes a GeoTIFF; choose a name that ends in .tif.").format(file=path)
        )


def _write_raster(study: Study, path: str) -> None:
    frame, crs = study.grid.frame, study.comparison.existing.crs
    method = "design less existing at the cell middles: fill above 0, cut below"
    cell = frame.cell / metres_per_unit(crs)
    write_geotiff(raster_of(frame, study.grid.depth, crs, cell, method, "depth"), path, silent)
