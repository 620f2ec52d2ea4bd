"""Every algorithm with something real to do: the demo survey thinned to a quarter, each output asked for as a file."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any, Dict, List, NamedTuple

from in_qgis import DEMO, Listener

CRS = "EPSG:25832"
#: Every how manieth ordinary ground shot of the demo survey is kept; coded points all are.
KEPT = 5


class Small(NamedTuple):
    """The chain on the thinned survey, in files that tests must not change."""

    survey: str
    "The thinned survey as the rover wrote it, the lines that are no points included."
    part: str
    "A third of it once more, some of it moved: two files that share points."
    points: str
    mesh: str
    earlier: str
    "The ground before, a mesh."
    contours: str
    catchments: str
    exchange: str
    "The surface with points, lines and an alignment as LandXML."
    yard: str
    "The ground about the pad, a mesh."
    control: str
    "Some of the survey's points, a little off."
    profile: str
    inlets: str


def thinned_survey(kept: int = KEPT) -> List[str]:
    """Lines of the demo survey, with one in ``kept`` of its ordinary ground shots."""
    lines: List[str] = []
    shots = 0
    for line in (DEMO / "survey.csv").read_text(encoding="utf-8").splitlines():
        ordinary = ",GR," in line
        shots += ordinary
        if not ordinary or shots % kept == 0:
            lines.append(line)
    return lines


def done(name: str, **parameters: Any) -> Dict[str, Any]:
    import processing

    return processing.run(f"hummock:{name}", parameters, feedback=Listener().feedback)


def small_chain(folder: Path) -> Small:
    """Run what the others need, into ``folder``."""
    lines = thinned_survey()
    survey, part = folder / "survey.csv", folder / "part.csv"
    survey.write_text("\n".join(lines) + "\n", encoding="utf-8")
    again = [line.replace(",GR,", ",AGAIN,") for line in lines if ",GR," in line][:400]
    part.write_text("\n".join([lines[0], *again]) + "\n", encoding="utf-8")
    points = done("importpoints", INPUT=str(survey), CRS=CRS, OUTPUT=str(folder / "points.gpkg"))["OUTPUT"]
    mesh = done("buildsurface", INPUT=points, MAX_RIM_EDGE=12.0, OUTPUT=str(folder / "ground.2dm"))["OUTPUT"]
    earlier = done("thinsurface", INPUT=str(DEMO / "before.2dm"), TOLERANCE=0.1, OUTPUT=str(folder / "earlier.2dm"))
    contours = done("contours", INPUT=mesh, INTERVAL=0.5, OUTPUT=str(folder / "contours.gpkg"))["OUTPUT"]
    catchments = done("catchments", INPUT=mesh, OUTPUT=str(folder / "catchments.gpkg"))["OUTPUT"]
    exchange = done(
        "exportlandxml", INPUT=mesh, POINTS=points, LINES=contours, ALIGNMENT=LINE, OUTPUT=str(folder / "site.xml")
    )["OUTPUT"]
    about = [line for line in lines[1:] if ",GR," in line and near_the_pad(line)]
    (folder / "about.csv").write_text("\n".join([lines[0], *about]) + "\n", encoding="utf-8")
    shots = done("importpoints", INPUT=str(folder / "about.csv"), CRS=CRS, OUTPUT=str(folder / "about.gpkg"))["OUTPUT"]
    yard = done("buildsurface", INPUT=shots, OUTPUT=str(folder / "yard.2dm"))["OUTPUT"]
    control, profile = folder / "control.csv", folder / "profile.csv"
    control.write_text("\n".join(["name,easting,northing,height", *known_points(lines)]) + "\n", encoding="utf-8")
    write_inlets(folder / "inlets.geojson")
    profile.write_text(PROFILE, encoding="utf-8")
    return Small(
        str(survey), str(part), points, mesh, earlier["OUTPUT"], contours, catchments, exchange, yard, str(control),
        str(profile), str(folder / "inlets.geojson"),
    )  # fmt: skip


def near_the_pad(line: str) -> bool:
    _, east, north, *_ = line.split(",")
    return 548305 < float(east) < 548356 and 5712425 < float(north) < 5712475


def known_points(lines: List[str]) -> List[str]:
    """Names and coordinates of some shots, each some millimetres off."""
    shots = [line.split(",")[:4] for line in lines if ",GR," in line][::200]
    return [
        f"{name},{float(east) + 0.003 * (i % 3)},{float(north) - 0.002 * (i % 2)},{float(height) + 0.004 * (i % 4)}"
        for i, (name, east, north, height) in enumerate(shots)
    ]


def write_inlets(path: Path) -> None:
    with open(DEMO / "inlets.csv", encoding="utf-8") as file:
        places = [[float(row["easting"]), float(row["northing"])] for row in csv.DictReader(file)]
    features = [
        {"type": "Feature", "properties": {}, "geometry": {"type": "Point", "coordinates": place}} for place in places
    ]
    system = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}
    path.write_text(json.dumps({"type": "FeatureCollection", "crs": system, "features": features}), encoding="utf-8")


LINE = str(DEMO / "centreline.geojson")
PADS = str(DEMO / "pad.geojson")
PHASES = str(DEMO / "phases.geojson")
PARCELS = f"{DEMO / 'site.gpkg'}|layername=parcels"
CHECKS = str(DEMO / "check_points.csv")
BASIN = f"548322.8,5712471.2 [{CRS}]"
PROFILE = "station,height\n0,91\n60,88.5\n128,86.5\n"


def cases(small: Small) -> Dict[str, Dict[str, Any]]:
    """Parameters of every algorithm, by its name; destinations by the name of their file or folder, all of them."""
    ground = {"INPUT": small.mesh}
    along = {**ground, "LINE": LINE}
    both = {"EXISTING": small.earlier, "DESIGN": small.mesh}
    volume = {"TABLE": "table.csv", "POLYGONS": "depths.gpkg", "ZERO_LINE": "zero.gpkg", "RASTER": "depths.tif",
              "HTML": "volume.html", "CELL": 2.0, "LINE": LINE}  # fmt: skip
    graded = {"OUTPUT": "design.2dm", "FINISHED": "finished.2dm", "LINES": "lines.gpkg", "DAYLIGHT": "daylight.gpkg",
              "DEPTH": "depth.gpkg", "TABLE": "table.csv", "CURVE": "curve.csv", "HTML": "grading.html"}  # fmt: skip
    return {
        "walkingplan": {"INPUT": PHASES, "VALUE": 0.5, "OUTPUT": "walk.gpkg"},
        "importpoints": {
            "INPUT": small.survey, "CRS": CRS, "OUTPUT": "points.gpkg", "REJECTS": "rejects.csv",
            "MORE": [small.part], "DIFFERENCES": "differences.gpkg", "NAMES_TWICE": "twice.csv",
        },
        "fitcontrol": {
            "INPUT": small.points, "CONTROL": small.control, "CRS": CRS, "OUTPUT": "fitted.gpkg",
            "RESIDUALS": "residuals.csv",
        },
        "correctbase": {
            "INPUT": small.points, "BASE_WAS": "548300,5712400,90", "BASE_IS": "548301.2,5712398.7,90.35",
            "OUTPUT": "shifted.gpkg",
        },
        "groundgrid": {"INPUT": small.points, "GEOID": 46.0, "OUTPUT": "ground.gpkg"},
        "checksurvey": {
            "INPUT": small.points, "OUTPUT": "checked.gpkg", "FINDINGS": "findings.shp", "RUNS": "runs.csv",
            "SAVE_TOLERANCES": "sets.json",
        },
        "findlines": {"INPUT": small.points, "OUTPUT": "lines.gpkg"},
        "buildsurface": {
            "INPUT": small.points, "MAX_RIM_EDGE": 12.0, "OUTPUT": "surface.2dm", "TRIANGLES": "triangles.gpkg",
            "LINES": "lines.geojson", "EDIT_REPORT": "edits.csv", "EDITS_OUT": "edits.json",
        },
        "inspectsurface": {**ground, "POINTS": small.points, "OUTPUT": "findings.gpkg"},
        "coverage": {
            **ground, "POINTS": small.points, "MAX_EDGE": 6.0, "OUTPUT": "again.gpkg", "CIRCLES": "circles.gpkg",
            "LONG": "long.gpkg", "CSV": "again.csv", "GPX": "again.gpx",
        },
        "accuracystatement": {**ground, "CHECKS_FILE": CHECKS, "OUTPUT": "checks.gpkg", "HTML": "statement.html"},
        "surfaceatpoints": {**ground, "POINTS": small.points, "OUTPUT": "asked.gpkg"},
        "drapelines": {**ground, "LINES": PARCELS, "OUTPUT": "draped.gpkg", "GAPS": "gaps.csv"},
        "surfaceraster": {**ground, "CELL": 1.0, "OUTPUT": "dem.tif"},
        "slopemap": {**ground, "OUTPUT": "slopes.gpkg"},
        "thinsurface": {**ground, "TOLERANCE": 0.05, "OUTPUT": "thin.2dm"},
        "contours": {**ground, "INTERVAL": 0.5, "OUTPUT": "contours.gpkg"},
        "contoursheet": {**ground, "INTERVAL": 0.5, "OUTPUT": "sheet.gpkg", "LABELS": "l.gpkg", "SPOTS": "s.gpkg"},
        "flowpaths": {
            **ground, "SPACING": 15.0, "INLETS": small.inlets, "OUTPUT": "paths.gpkg", "PLACES": "places.gpkg",
        },
        "flowarrows": {**ground, "SPACING": 10.0, "OUTPUT": "arrows.gpkg"},
        "ponds": {
            **ground, "INLETS": small.inlets, "OUTPUT": "ponds.gpkg", "PITS": "pits.gpkg", "SPILLS": "spills.gpkg",
            "HTML": "ponds.html",
        },
        "catchments": {
            **ground, "INLETS": small.inlets, "OUTPUT": "areas.gpkg", "CHANNELS": "channels.gpkg",
            "RIDGES": "ridges.gpkg", "HTML": "catchments.html",
        },
        "flatareas": {**ground, "LIMIT": 3.0, "OUTPUT": "flat.gpkg"},
        "peakflow": {"INPUT": small.catchments, "INTENSITY": 60.0, "RUNOFF": 0.3, "OUTPUT": "flow.gpkg"},
        "waterchange": {
            "INPUT": small.earlier, "DESIGN": small.mesh, "INLETS": small.inlets, "SPACING": 15.0,
            "OUTPUT": "ponds.gpkg", "MOVED": "moved.gpkg", "PATHS": "paths.gpkg", "AREAS": "areas.gpkg",
            "HTML": "change.html",
        },
        "roadprofile": {**along, "OUTPUT": "stations.gpkg", "PROFILE": "profile.gpkg", "PDF": "profile.pdf"},
        "crosssections": {
            **along, "DESIGN": small.earlier, "OUTPUT": "sections.gpkg", "POINTS_OUTPUT": "points.gpkg",
            "AREAS": "areas.csv", "PDF": "sections.pdf",
        },
        "roadgrades": {**along, "OUTPUT": "slopes.gpkg", "CROSSFALLS": "falls.gpkg"},
        "verticalcurves": {
            **along, "OUTPUT": "elements.csv", "MEETINGS": "meetings.csv", "RESIDUALS": "off.csv", "PDF": "fit.pdf",
        },
        "checkline": {
            **along, "OUTPUT": "stretches.gpkg", "FLOW": "flow.gpkg", "LOW_POINTS": "low.gpkg", "HTML": "road.html",
            "SAVE_RULES": "rules.csv",
        },
        "volume": {**both, **volume, "REGIONS": PHASES},
        "volumetoplane": {**ground, **volume, "LEVEL": 87.0},
        "volumebyregion": {
            **both, **volume, "REGIONS": PHASES, "OUTPUT": "regions.gpkg", "CLASSES": "classes.csv",
            "MATERIALS": "materials.csv",
        },
        "stockpile": {**ground, "LINES": PADS, "OUTPUT": "heaps.gpkg", "HTML": "heaps.html"},
        "basinstorage": {
            **ground, "PLACE": BASIN, "STEPS": 10, "TABLE": "storage.csv", "WATER": "water.gpkg",
            "PLACES": "places.gpkg", "HTML": "storage.html",
        },
        "padgrading": {**graded, "INPUT": small.yard, "PADS": PADS, "LEVEL": 86.4, "CORNERS": 1},
        "stripgrading": {**along, **graded, "PROFILE": small.profile, "STEP": 20.0, "MASS": "mass.csv"},
        "balanceheight": {
            "INPUT": small.yard, "PADS": PADS, "CORNERS": 1, "CURVE": "curve.csv", "HTML": "balance.html",
        },
        "plansheet": {
            **ground, "INTERVAL": 0.5, "PARCELS": PARCELS, "CHECKS_FILE": CHECKS, "TITLE": "Pippin Field",
            "OUTPUT": "plan.pdf", "LAYERS": "plan.gpkg",
        },
        "surveyreport": {"INPUT": small.survey, "CRS": CRS, "INTERVAL": 0.5, "CHECKS_FILE": CHECKS, "FOLDER": "report"},
        "handoverfiles": {
            **ground, "POINTS": small.points, "INTERVAL": 1.0, "CELL": 1.0, "LAYERS": [PARCELS], "NAME": "field",
            "FOLDER": "handed",
        },
        "exportlandxml": {**ground, "POINTS": small.points, "ALIGNMENT": LINE, "OUTPUT": "site.xml"},
        "readlandxml": {
            "INPUT": small.exchange, "FOLDER": "read", "POINTS": "points.gpkg", "LINES": "lines.gpkg",
            "ALIGNMENTS": "alignments.gpkg",
        },
        "setout": {
            **ground, "PLACES": PARCELS, "WAY": 1, "SPACING": 5.0, "OUTPUT": "marks.gpkg", "TABLE": "marks.csv",
        },
    }  # fmt: skip


def placed(algorithm: Any, parameters: Dict[str, Any], folder: Path) -> Dict[str, Any]:
    """``parameters`` with the destinations in ``folder``."""
    names = {definition.name() for definition in algorithm.destinationParameterDefinitions()}
    return {name: str(folder / value) if name in names else value for name, value in parameters.items()}


def run_every_one(small: Small, folder: Path) -> Dict[str, str]:
    """All algorithms, each into a folder of its name; what those that failed said."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProject

    said: Dict[str, str] = {}
    for name, parameters in cases(small).items():
        (folder / name).mkdir(parents=True)
        algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"hummock:{name}")
        context, listener = QgsProcessingContext(), Listener()
        context.setProject(QgsProject.instance())
        _, fine = algorithm.run(placed(algorithm, parameters, folder / name), context, listener.feedback)
        if not fine:
            said[name] = " ".join(listener.errors)
        QgsProject.instance().clear()
    return said
