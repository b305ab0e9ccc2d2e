#include "tests/support/RestingPoses.h"
#include "ui/figure/FigureSvg.h"

#include <QImage>
#include <QPainter>
#include <QSvgRenderer>
#include <QXmlStreamReader>
#include <gmock/gmock.h>

namespace matwright {
namespace {

using test::squat;

const FigureCaption kCaption{QStringLiteral("Squat & <reach>"), QStringLiteral("Drawn from the side.")};

QByteArray drawn(FigureEnds ends) { return figureSvg(squat(), ends, kCaption, svgStyle({Region::frontThigh})); }

struct Outline {
  bool wellFormed = false;
  QStringList elements;
  QXmlStreamAttributes root;
  QString title, description;
};

Outline read(const QByteArray& svg) {
  Outline outline;
  QXmlStreamReader xml(svg);
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement)
      continue;
    const QString name = xml.name().toString();
    if (outline.elements.isEmpty())
      outline.root = xml.attributes();
    outline.elements << name;
    if (name == QLatin1String("title"))
      outline.title = xml.readElementText();
    else if (name == QLatin1String("desc"))
      outline.description = xml.readElementText();
  }
  outline.wellFormed = !xml.hasError();
  return outline;
}

TEST(FigureSvg, IsWellFormedAndSaysWhatItShows) {
  for (const FigureEnds ends : {FigureEnds::start, FigureEnds::end, FigureEnds::both}) {
    const Outline outline = read(drawn(ends));
    EXPECT_TRUE(outline.wellFormed);
    EXPECT_EQ(outline.elements.front(), QStringLiteral("svg"));
    EXPECT_EQ(outline.title, kCaption.title);
    EXPECT_EQ(outline.description, kCaption.description);
    EXPECT_EQ(outline.root.value(QLatin1String("role")), QLatin1String("img"));
  }
}

TEST(FigureSvg, IsMadeOfVectorsAlone) {
  const Outline outline = read(drawn(FigureEnds::both));
  EXPECT_FALSE(outline.elements.contains(QStringLiteral("image")));
  EXPECT_GT(outline.elements.count(QStringLiteral("path")) + outline.elements.count(QStringLiteral("polygon")), 12);
}

TEST(FigureSvg, HasAViewBoxAndNoOtherSize) {
  const Outline outline = read(drawn(FigureEnds::end));
  EXPECT_FALSE(outline.root.hasAttribute(QLatin1String("width")));
  EXPECT_FALSE(outline.root.hasAttribute(QLatin1String("height")));
  const QStringList box = outline.root.value(QLatin1String("viewBox")).toString().split(u' ');
  ASSERT_EQ(box.size(), 4);
  EXPECT_GT(box[2].toDouble(), 400); // thousandths of the stature
  EXPECT_LT(box[3].toDouble(), 1100);
}

// At three sizes the same share of the picture is inked.
TEST(FigureSvg, LooksTheSameAtAnySize) {
  QSvgRenderer renderer(drawn(FigureEnds::both));
  ASSERT_TRUE(renderer.isValid());
  std::vector<double> shares;
  for (const double scale : {0.1, 0.4, 1.0}) {
    const QSize size = (QSizeF(renderer.viewBoxF().size()) * scale).toSize();
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    renderer.render(&painter);
    painter.end();
    double ink = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        ink += qAlpha(image.pixel(x, y)) / 255.0;
    shares.push_back(ink / (size.width() * size.height()));
  }
  EXPECT_GT(shares.back(), 0.1);
  EXPECT_NEAR(shares[0], shares[2], 0.01);
  EXPECT_NEAR(shares[1], shares[2], 0.005);
}

TEST(FigureSvg, StartEndAndBothDiffer) {
  const QByteArray start = drawn(FigureEnds::start), end = drawn(FigureEnds::end), both = drawn(FigureEnds::both);
  EXPECT_NE(start, end);
  EXPECT_GT(both.size(), end.size());
  EXPECT_TRUE(both.contains(svgStyle({}).colours.ghost.name().toUtf8()));
  EXPECT_FALSE(end.contains(svgStyle({}).colours.ghost.name().toUtf8()));
}

} // namespace
} // namespace matwright
