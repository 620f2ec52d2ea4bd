"""What the grading algorithms have in common: outputs of a graded design, and writing them."""

from __future__ import annotations

from typing import Any, Callable, Dict, List, Optional, Tuple

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputMapLayer,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.confidence import NORMAL_95
from ..core.earthwork.balance import Balance
from ..core.earthwork.centreline import make_stations
from ..core.earthwork.graded_site import GradedSite
from ..core.earthwork.grading_study import GradingStudy, study_grading, with_balance
from ..core.earthwork.study import StudyOptions
from ..core.earthwork.volume import Volume
from ..core.handover.mesh import write_2dm
from ..core.handover.projection import write_prj
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units
from .algorithm import HummockAlgorithm, page_language, report
from .certainty import add_certainty, first_certainty, offset_sigma
from .depthstyles import dress_depths
from .earthmaterials import add_earth_parameters, chosen_earth
from .gradinglayers import (
    curve_fields,
    design_line_fields,
    mass_fields,
    write_breaklines,
    write_curve,
    write_daylight,
    write_mass,
)
from .localnumbers import shown
from .parameters import number, qgis_crs
from .styles import DESIGN_LINES, dress_vector, load_mesh
from .surfaceinput import SurfaceAlgorithm
from .versions import LINE, LINE_SOURCE, LINE_Z, MULTIPOLYGON, NO_GEOMETRY, POLYGON_SOURCE, TABLE_SOURCE
from .volumelayers import class_fields, volume_fields, write_depth_polygons, write_volumes
from .volumeresults import class_texts, classes_of, study_numbers, tell

translate = QCoreApplication.translate

# Parameters


def add_balance_parameters(algorithm: HummockAlgorithm, choice: bool) -> None:
    """BALANCE, where there is a ``choice``, and SURPLUS."""
    if choice:
        algorithm.add(
            QgsProcessingParameterBoolean("BALANCE", translate("hummock", "Find the height that balances"), False),
            translate(
                "hummock",
                "Raises or lowers the whole design until cut, times the fill that a cubic metre of it makes, "
                "equals fill and the surplus.",
            ),
        )
    algorithm.add(
        number("SURPLUS", translate("hummock", "Surplus of the balance (m³ of fill; below 0: brought in)"), 0.0),
        translate(
            "hummock",
            "Fill to be left over for use elsewhere, or to be had from there. Topsoil that is stripped first "
            "is not in the balance.",
        ),
        advanced=True,
    )


def add_earthwork_options(algorithm: HummockAlgorithm) -> None:
    """How sure the survey is, and what is done with the earth."""
    add_certainty(algorithm, second=False)
    add_earth_parameters(algorithm)


def add_design_outputs(algorithm: HummockAlgorithm) -> None:
    """OUTPUT, FINISHED, LINES, DAYLIGHT, DEPTH, TABLE, CURVE and HTML."""
    meshes = translate("hummock", "2DM meshes (*.2dm)")
    algorithm.add(
        QgsProcessingParameterBoolean("LOAD", translate("hummock", "Add the meshes to the map when done"), True),
        translate("hummock", "Switch it off for a step inside a model."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterFileDestination("OUTPUT", translate("hummock", "Design (2DM mesh)"), meshes),
        translate("hummock", "Platform and slopes to daylight; the CRS is written beside it as .prj."),
    )
    algorithm.add(
        QgsProcessingParameterFileDestination(
            "FINISHED", translate("hummock", "Finished ground (2DM mesh)"), meshes, optional=True
        ),
        translate("hummock", "The existing surface with the design in it: what the ground will be."),
    )
    vectors = (
        ("LINES", translate("hummock", "Breaklines of the design"), LINE_SOURCE, True,
         translate("hummock", "Edges and breaks of platform and slopes with their heights, by kind.")),
        ("DAYLIGHT", translate("hummock", "Daylight lines"), LINE_SOURCE, True,
         translate("hummock", "Where the design meets the ground: top of cut, toe of fill, and ends without slope.")),
        ("DEPTH", translate("hummock", "Depth of cut and fill (polygons)"), POLYGON_SOURCE, True,
         translate("hummock", "A feature for each class of depth that occurs, with its exact area and volume.")),
        ("TABLE", translate("hummock", "Volumes (table)"), TABLE_SOURCE, True,
         translate("hummock", "Cut, fill and net with their doubt.")),
    )  # fmt: skip
    for name, label, kind, default, help_text in vectors:
        algorithm.add(
            QgsProcessingParameterFeatureSink(name, label, kind, optional=True, createByDefault=default), help_text
        )
    add_curve_output(algorithm)
    add_page_output(algorithm)
    algorithm.addOutput(QgsProcessingOutputMapLayer("DESIGN", translate("hummock", "Design, for the next step")))
    algorithm.addOutput(
        QgsProcessingOutputMapLayer("GROUND", translate("hummock", "Finished ground, for the next step"))
    )


def add_curve_output(algorithm: HummockAlgorithm, default: bool = False) -> None:
    algorithm.add(
        QgsProcessingParameterFeatureSink(
            "CURVE", translate("hummock", "Volumes by height (table)"), TABLE_SOURCE, optional=True,
            createByDefault=default,
        ),
        translate("hummock", "Cut, fill and what is left over about the balanced height; empty without a balance."),
    )  # fmt: skip


def add_page_output(algorithm: HummockAlgorithm) -> None:
    algorithm.add_page(
        "HTML",
        translate("hummock", "Report (HTML)"),
        translate("hummock", "One page: plan, sections, volumes with their doubt, balance, other methods, cautions."),
    )


def design_numbers() -> List[Tuple[str, str]]:
    return [
        ("CUT", translate("hummock", "Cut (m³)")),
        ("CUT_95", translate("hummock", "Cut, half its 95 % interval (m³)")),
        ("FILL", translate("hummock", "Fill (m³)")),
        ("FILL_95", translate("hummock", "Fill, half its 95 % interval (m³)")),
        ("NET", translate("hummock", "Fill less cut (m³)")),
        ("NET_95", translate("hummock", "Fill less cut, half its 95 % interval (m³)")),
        ("AREA", translate("hummock", "Ground taken by the design (m²)")),
        *balance_numbers(),
    ]


def balance_numbers() -> List[Tuple[str, str]]:
    return [
        ("SHIFT", translate("hummock", "Shift that balances (m)")),
        ("HEIGHT", translate("hummock", "Balanced height (in the unit of the CRS)")),
        ("HEIGHT_95", translate("hummock", "Half the 95 % interval of the shift (m)")),
    ]


# What was found


def study_options(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> StudyOptions:
    """How sure the surface ``tin`` is, and what is done with the earth."""
    earth = chosen_earth(algorithm, parameters, context)
    return StudyOptions(
        existing=first_certainty(algorithm, tin, parameters, context, feedback),
        offset_sigma=offset_sigma(algorithm, parameters, context),
        factors=earth.factors,
        truck=earth.truck,
        topsoil=earth.topsoil,
    )


def balance_factor(options: StudyOptions) -> float:
    """Fill from one cubic metre of cut, as much of it as can be used."""
    return options.factors.compacted * (1 - options.factors.unusable)


def studied(
    site: GradedSite,
    options: StudyOptions,
    step: Optional[float],
    balance: Optional[Balance],
    first: float,
    volume_at: Callable[[float], Volume],
    surplus: float,
    curve: bool,
    progress: Progress,
) -> GradingStudy:
    """The study of a site; with its curve of volumes, which takes as long as all else, only where wanted."""
    found = study_grading(site, options, step, progress=part(progress, 0.0, 0.5))
    if balance is None:
        return found
    reach = None if curve else 0.0
    return with_balance(
        found, balance, first, volume_at, balance_factor(options), surplus, reach, part(progress, 0.5, 1.0)
    )


def write_design(
    algorithm: HummockAlgorithm,
    found: GradingStudy,
    name: str,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> Dict[str, Any]:
    """The outputs of :func:`add_design_outputs` that are wanted, the log, and the numbers."""
    site, crs = found.site, found.site.design.crs
    report(found.design_messages, feedback)
    results: Dict[str, Any] = _write_meshes(algorithm, site, parameters, context)
    for output, writer in (
        ("LINES", write_breaklines),
        ("DAYLIGHT", lambda own, sink: write_daylight(own.lines, crs, sink)),
    ):
        sink, place = algorithm.parameterAsSink(
            parameters, output, context, design_line_fields(), LINE_Z, qgis_crs(crs)
        )
        if sink is not None:
            writer(site, sink)
            dress_vector(context, place, DESIGN_LINES)
            results[output] = place
    results.update(_write_depths(algorithm, found, parameters, context))
    results.update(_write_table(algorithm, found, parameters, context))
    results.update(write_balance(algorithm, found, name, parameters, context, feedback))
    tell(found.study, feedback)
    numbers = study_numbers(found.study)
    results.update({key: numbers[key] for key in ("CUT", "CUT_95", "FILL", "FILL_95", "NET", "NET_95")})
    results["AREA"] = site.design.plan_area
    feedback.pushInfo(
        translate(
            "hummock",
            "Not a design for construction: whether slopes stand, and safety while they are dug, need licensed "
            "practice and the local codes.",
        )
    )
    return results


def _write_meshes(
    algorithm: HummockAlgorithm, site: GradedSite, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Dict[str, Any]:
    results: Dict[str, Any] = {}
    load = algorithm.parameterAsBool(parameters, "LOAD", context)
    meshes: Tuple[Tuple[str, str, Tin, str], ...] = (
        ("FINISHED", "GROUND", site.finished, translate("hummock", "Finished ground, height")),
        ("OUTPUT", "DESIGN", site.design, translate("hummock", "Design, height")),
    )
    for output, layer, tin, title in meshes:
        path = algorithm.parameterAsFileOutput(parameters, output, context)
        if path:
            write_2dm(tin, path)
            write_prj(path, tin.crs)
            if load:
                load_mesh(context, path, output, title, qgis_crs(tin.crs))
            results[output] = results[layer] = path
    return results


def _write_depths(
    algorithm: HummockAlgorithm, found: GradingStudy, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Dict[str, Any]:
    crs, study = found.site.design.crs, found.study
    sink, place = algorithm.parameterAsSink(parameters, "DEPTH", context, class_fields(), MULTIPOLYGON, qgis_crs(crs))
    if sink is None:
        return {}
    texts = class_texts(study)
    write_depth_polygons(study.polygons, dict(zip(classes_of(study), study.depths)), texts, crs, sink)
    met = sorted({polygon.label for polygon in study.polygons})
    dress_depths(context, place, [(each, texts[each]) for each in met], len(study.limits) + 1)
    return {"DEPTH": place}


def _write_table(
    algorithm: HummockAlgorithm, found: GradingStudy, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Dict[str, Any]:
    sink, place = algorithm.parameterAsSink(parameters, "TABLE", context, volume_fields(), NO_GEOMETRY)
    if sink is None:
        return {}
    for each, doubt in zip(found.site.pads, found.pad_doubts):
        volume = each.grading.volume
        write_volumes(each.pad.name, doubt, (volume.cut_area, volume.fill_area, volume.common_area), sink)
    volume = found.study.volume
    areas = (volume.cut_area, volume.fill_area, volume.common_area)
    write_volumes(translate("hummock", "whole design"), found.study.doubt, areas, sink)
    return {"TABLE": place}


def write_haul(
    algorithm: HummockAlgorithm, found: GradingStudy, step: float, parameters: Dict[str, Any],
    context: QgsProcessingContext,
) -> Dict[str, Any]:  # fmt: skip
    """MASS, where it is wanted: what is cut and filled from station to station."""
    crs = found.site.design.crs
    sink, place = algorithm.parameterAsSink(parameters, "MASS", context, mass_fields(), LINE, qgis_crs(crs))
    if sink is None or found.haul is None:
        return {}
    write_mass(found.haul, make_stations(found.site.axis, step), crs, sink)
    return {"MASS": place}


def write_balance(
    algorithm: HummockAlgorithm,
    found: GradingStudy,
    name: str,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> Dict[str, Any]:
    """CURVE, HTML, and the numbers of a balance."""
    results: Dict[str, Any] = {}
    crs, balanced = found.site.design.crs, found.balanced
    sink, place = algorithm.parameterAsSink(parameters, "CURVE", context, curve_fields(), NO_GEOMETRY)
    if sink is not None:
        if balanced is not None:
            write_curve(balanced, crs, sink)
        results["CURVE"] = place
    if balanced is not None:
        half = NORMAL_95 * balanced.sigma
        results["SHIFT"], results["HEIGHT_95"] = balanced.balance.shift, half
        height = float(heights_to_crs_units(balanced.height, crs))
        text = translate(
            "hummock", "Cut and fill balance with the design shifted by {shift:+.3f} ± {half:.3f} m (95 %)."
        )
        if balanced.first == balanced.first:  # not nan
            results["HEIGHT"] = height
            text = translate("hummock", "Cut and fill balance at {height:.3f} ({shift:+.3f} ± {half:.3f} m, 95 %).")
        feedback.pushInfo(shown(text, height=height, shift=balanced.balance.shift, half=half))
    path = algorithm.parameterAsFileOutput(parameters, "HTML", context)
    if path:
        from ..core.report.grading_page import write_grading_page  # brings matplotlib, for which QGIS need not wait

        write_grading_page(found, path, name, *page_language())
        results["HTML"] = path
    return results


def wants_curve(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> bool:
    """Whether an output shows volumes by height."""
    return bool(parameters.get("CURVE")) or bool(algorithm.parameterAsFileOutput(parameters, "HTML", context))
