<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>matwright::CautionList</name>
    <message numerus="yes">
        <source>%n caution(s)</source>
        <translation>
            <numerusform>%n caution</numerusform>
            <numerusform>%n cautions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n remark(s) about the class</source>
        <translation>
            <numerusform>%n remark about the class</numerusform>
            <numerusform>%n remarks about the class</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::ClassCommands</name>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::PeopleChooser</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n person</numerusform>
            <numerusform>%n people</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::PeopleWorkspace</name>
    <message numerus="yes">
        <source>%n in this class; tick who comes.</source>
        <translation>
            <numerusform>%n in this class; tick who comes.</numerusform>
            <numerusform>%n in this class; tick who comes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::QualifierField</name>
    <message numerus="yes">
        <source>%n week(s) on %1</source>
        <translation>
            <numerusform>%n week on %1</numerusform>
            <numerusform>%n weeks on %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::SeveralPage</name>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StepFactsText</name>
    <message numerus="yes">
        <source>%n change(s)</source>
        <translation>
            <numerusform>%n change</numerusform>
            <numerusform>%n changes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Totals</name>
    <message numerus="yes">
        <source>for %n person(s)</source>
        <translation>
            <numerusform>for %n person</numerusform>
            <numerusform>for %n people</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>for %1 of %n people</source>
        <translation>
            <numerusform>for %1 of %n person</numerusform>
            <numerusform>for %1 of %n people</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CatalogueModel</name>
    <message numerus="yes">
        <source>%n change(s)</source>
        <translation>
            <numerusform>%n change</numerusform>
            <numerusform>%n changes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) fewer</source>
        <translation>
            <numerusform>%n change fewer</numerusform>
            <numerusform>%n changes fewer</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::CuesPage</name>
    <message numerus="yes">
        <source>%n words; 8 to 25, spoken while people get ready.</source>
        <translation>
            <numerusform>%n word; 8 to 25, spoken while people get ready.</numerusform>
            <numerusform>%n words; 8 to 25, spoken while people get ready.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n words; at most 9, breath first where it matters: &quot;out: curl, in: wait&quot;.</source>
        <translation>
            <numerusform>%n word; at most 9, breath first where it matters: &quot;out: curl, in: wait&quot;.</numerusform>
            <numerusform>%n words; at most 9, breath first where it matters: &quot;out: curl, in: wait&quot;.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::MovementsWorkspace</name>
    <message numerus="yes">
        <source>Removed, and no longer named by %n other movements of yours.</source>
        <translation>
            <numerusform>Removed, and no longer named by %n other movement of yours.</numerusform>
            <numerusform>Removed, and no longer named by %n other movements of yours.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n movements imported.</source>
        <translation>
            <numerusform>%n movement imported.</numerusform>
            <numerusform>%n movements imported.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were here already.</source>
        <translation>
            <numerusform>%n was here already.</numerusform>
            <numerusform>%n were here already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The file also holds %n conditions, rules or sources, which are left alone here.</source>
        <translation>
            <numerusform>The file also holds %n condition, rule or source, which is left alone here.</numerusform>
            <numerusform>The file also holds %n conditions, rules or sources, which are left alone here.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MovementFiles</name>
    <message numerus="yes">
        <source>Import %n movements</source>
        <translation>
            <numerusform>Import %n movement</numerusform>
            <numerusform>Import %n movements</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::SwapMenu</name>
    <message numerus="yes">
        <source>%n caution(s) gone</source>
        <translation>
            <numerusform>%n caution gone</numerusform>
            <numerusform>%n cautions gone</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) of position more</source>
        <translation>
            <numerusform>%n change of position more</numerusform>
            <numerusform>%n changes of position more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) of position fewer</source>
        <translation>
            <numerusform>%n change of position fewer</numerusform>
            <numerusform>%n changes of position fewer</numerusform>
        </translation>
    </message>
</context>
</TS>
