"""Styles inside a GeoPackage: the same text in every run, and still the style that the layer had."""

from __future__ import annotations

import re
import sqlite3
import uuid
from pathlib import Path
from typing import Any, Dict, List
from xml.sax.saxutils import quoteattr

import pytest
from in_qgis import memory_layer
from test_whole_files import contents

CROSSES = [f"Point({500000 + 10 * i} {5700000 + 10 * j})" for i in range(4) for j in range(4)]


def drawn_by_lot() -> str:
    return f"{{{uuid.uuid4()}}}"


def style_text(turned: bool) -> str:
    """A style as QGIS may write it: with identifiers of its own, and attributes in one order or the other."""

    def element(tag: str, inner: str = "", **attributes: str) -> str:
        pairs = list(attributes.items())
        said = " ".join(f"{name}={quoteattr(value)}" for name, value in (reversed(pairs) if turned else pairs))
        return f"<{tag} {said}>{inner}</{tag}>"

    rule, layer, category, action, callout = (drawn_by_lot() for _ in range(5))
    inner = element("symbol", element("layer", id=callout, **{"class": "SimpleLine"}), type="line", name="symbol")
    return element(
        "qgis",
        element(
            "rules", element("rule", key=rule, filter="\"id\" = '{00000000-1111-2222-3333-444444444444}'"), key=rule
        )
        + element("layer", id=layer, **{"class": "SimpleMarker"})
        + element("category", uuid=category, label="one")
        + element("actionsetting", id=action, name="open")
        + element("defaultAction", key="Canvas", value=action)
        + element("text-mask", maskedSymbolLayers=f"points,{layer},0", maskType="0")
        + element("Option", name="lineSymbol", value=inner),
        version="3.40",
        labelsEnabled="1",
    )


def test_the_same_style_is_the_same_text(application: Any) -> None:
    from plugin.processing.geopackage import settled_style

    one = settled_style(style_text(False), "points")
    assert one == settled_style(style_text(True), "points")
    assert one == settled_style(one, "points")
    assert one != settled_style(style_text(False), "lines")


def test_what_refers_to_an_identifier_still_does_and_values_stay(application: Any) -> None:
    from plugin.processing.geopackage import settled_style

    text = style_text(False)
    settled = settled_style(text, "points")
    form = re.compile(r"\{[0-9a-f-]{36}\}")
    before, after = form.findall(text), form.findall(settled)
    assert len(after) == len(before) == 9
    # attributes are in order now: compare how often each identifier stands, and those that refer
    assert sorted(after.count(one) for one in set(after)) == sorted(before.count(one) for one in set(before))
    assert set(after) & set(before) == {"{00000000-1111-2222-3333-444444444444}"}
    assert "{00000000-1111-2222-3333-444444444444}" in settled
    action = re.search(r'<actionsetting id="([^"]+)"', settled)
    mask = re.search(r'<layer class="SimpleMarker" id="([^"]+)"', settled)
    assert action is not None
    assert mask is not None
    assert f'<defaultAction key="Canvas" value="{action.group(1)}"' in settled
    assert f'maskedSymbolLayers="points,{mask.group(1)},0"' in settled


def crosses() -> Any:
    """Points with two rules, labels by rules with a leader, and an action that is the default."""
    from qgis.core import (
        QgsAction,
        QgsMarkerSymbol,
        QgsPalLayerSettings,
        QgsRuleBasedLabeling,
        QgsRuleBasedRenderer,
        QgsSimpleLineCallout,
    )

    from plugin.processing.versions import field, member

    layer = memory_layer("Point", CROSSES, "EPSG:25832", "Crosses of the grid")
    layer.dataProvider().addAttributes([field("name", "text")])
    layer.updateFields()
    numbers = {feature.id(): {0: f"P{number}"} for number, feature in enumerate(layer.getFeatures())}
    layer.dataProvider().changeAttributeValues(numbers)
    root = QgsRuleBasedRenderer.Rule(None)
    for colour, size, wish in (("#1b7837", "3", "$id % 2 = 0"), ("#762a83", "5", "$id % 2 = 1")):
        dot = QgsMarkerSymbol.createSimple({"name": "cross2", "outline_color": colour, "size": size})
        root.appendChild(QgsRuleBasedRenderer.Rule(dot, 0, 0, wish, colour))
    layer.setRenderer(QgsRuleBasedRenderer(root))
    settings = QgsPalLayerSettings()
    settings.fieldName = "name"
    settings.dist = 5
    leader = QgsSimpleLineCallout()
    leader.setEnabled(True)
    settings.setCallout(leader)
    labels = QgsRuleBasedLabeling.Rule(None)
    labels.appendChild(QgsRuleBasedLabeling.Rule(settings, 0, 0, "\"name\" <> 'P3'"))
    layer.setLabeling(QgsRuleBasedLabeling(labels))
    layer.setLabelsEnabled(True)
    action = QgsAction(member(QgsAction, "ActionType", "GenericPython"), "Say", "print(1)")
    action.setActionScopes({"Canvas"})
    layer.actions().addAction(action)
    layer.actions().setDefaultAction("Canvas", action.id())
    return layer


def styles_in(path: Path) -> Dict[str, Any]:
    base = sqlite3.connect(path)
    try:
        rows = base.execute("SELECT f_table_name, styleName, useAsDefault, styleQML, styleSLD FROM layer_styles")
        return {name: rest for name, *rest in rows.fetchall()}
    finally:
        base.close()


def packed(layers: Dict[str, Any], path: Path) -> Path:
    from qgis.core import QgsProcessingContext

    from plugin.core.progress import silent
    from plugin.processing.geopackage import PackedLayer, write_geopackage

    pairs = [PackedLayer(name, layer) for name, layer in layers.items()]
    write_geopackage(pairs, str(path), QgsProcessingContext(), silent)
    return path


def picture(layer: Any) -> bytes:
    from qgis.core import QgsMapRendererSequentialJob, QgsMapSettings
    from qgis.PyQt.QtCore import QSize

    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setOutputSize(QSize(300, 300))
    extent = layer.extent()
    extent.grow(10)
    settings.setExtent(extent)
    settings.setDestinationCrs(layer.crs())
    job = QgsMapRendererSequentialJob(settings)
    job.start()
    job.waitForFinished()
    image = job.renderedImage()
    bits = image.constBits()
    bits.setsize(image.sizeInBytes())
    return bytes(bits)


def test_a_style_comes_back_as_it_was(project: Any, tmp_path: Path) -> None:
    from qgis.core import QgsVectorLayer

    layer = crosses()
    path = packed({"crosses": layer}, tmp_path / "one.gpkg")
    assert styles_in(path)["crosses"][:2] == ["Crosses of the grid", 1]
    back = QgsVectorLayer(f"{path}|layername=crosses", "back", "ogr")
    rules: List[List[Any]] = [
        [(rule.label(), rule.filterExpression(), rule.symbol().color().name(), rule.symbol().size()) for rule in
         one.renderer().rootRule().children()]
        for one in (layer, back)
    ]  # fmt: skip
    assert rules[0] == rules[1]
    assert len(rules[1]) == 2
    (label,) = back.labeling().rootRule().children()
    assert label.filterExpression() == "\"name\" <> 'P3'"
    assert label.settings().callout().enabled()
    assert back.labelsEnabled()
    assert back.actions().defaultAction("Canvas").name() == "Say"
    drawn = picture(back)
    assert len(set(drawn)) > 2
    back.setLabelsEnabled(False)
    assert picture(back) != drawn
    assert picture(layer) == drawn


def test_the_same_layers_are_the_same_file(project: Any, tmp_path: Path) -> None:
    """Descriptions and all else that QGIS puts beside the style, too; each layer is styled anew."""
    from plugin.processing.fixedcolours import fix_profile

    made = []
    for name in ("one.gpkg", "other.gpkg"):
        layer = crosses()
        fix_profile(layer)
        made.append(contents(packed({"crosses": layer}, tmp_path / name)))
    assert made[0] == made[1]
    assert any("layer_styles" in line and "Crosses of the grid" in line for line in made[0])


@pytest.mark.parametrize("kind", ["Point", "LineString", "Polygon"])
def test_a_layer_without_a_style_is_drawn_alike_in_every_run(project: Any, tmp_path: Path, kind: str) -> None:
    from qgis.core import QgsProcessingContext, QgsProcessingUtils, QgsVectorFileWriter

    from plugin.processing.fixedcolours import INK, dress_plainly, has_chance_look

    where = {"Point": "(1 1)", "LineString": "(1 1, 2 2)", "Polygon": "((1 1, 2 1, 2 2, 1 1))"}[kind]
    source = str(tmp_path / "plain.geojson")
    options = QgsVectorFileWriter.SaveVectorOptions()
    options.driverName = "GeoJSON"
    given = memory_layer(kind, [f"{kind} {where}"], "EPSG:4326", "plain")
    QgsVectorFileWriter.writeAsVectorFormatV3(given, source, project.transformContext(), options)
    texts = []
    for name in ("one.gpkg", "other.gpkg"):
        context = QgsProcessingContext()
        layer = QgsProcessingUtils.mapLayerFromString(source, context)
        assert has_chance_look(layer, context)
        dress_plainly(layer)
        assert layer.renderer().symbol().color().name() == INK
        texts.append(styles_in(packed({"plain": layer}, tmp_path / name)))
    assert texts[0] == texts[1]
    layer.saveNamedStyle(source.replace(".geojson", ".qml"))
    context = QgsProcessingContext()
    assert not has_chance_look(QgsProcessingUtils.mapLayerFromString(source, context), context)
    assert not has_chance_look(given, context)


def test_what_sqlite_left_of_a_former_file_is_not_read_into_the_new_one(project: Any, tmp_path: Path) -> None:
    target = tmp_path / "one.gpkg"
    for beside in ("-wal", "-shm"):
        (tmp_path / f"one.gpkg{beside}").write_bytes(b"left")
    packed({"crosses": crosses()}, target)
    assert [path.name for path in tmp_path.iterdir()] == ["one.gpkg"]
