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
    <name>matwright::ComposeDialog</name>
    <message numerus="yes">
        <source>%n step(s) added</source>
        <translation>
            <numerusform>%n step added</numerusform>
            <numerusform>%n steps added</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) of the focus have less time than wished</source>
        <translation>
            <numerusform>%n part of the focus has less time than wished</numerusform>
            <numerusform>%n parts of the focus have less time than wished</numerusform>
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
</context>
<context>
    <name>ExchangeText</name>
    <message numerus="yes">
        <source>%n movement(s)</source>
        <translation>
            <numerusform>%n movement</numerusform>
            <numerusform>%n movements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n condition(s)</source>
        <translation>
            <numerusform>%n condition</numerusform>
            <numerusform>%n conditions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rule(s)</source>
        <translation>
            <numerusform>%n rule</numerusform>
            <numerusform>%n rules</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n source(s)</source>
        <translation>
            <numerusform>%n source</numerusform>
            <numerusform>%n sources</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n threshold(s)</source>
        <translation>
            <numerusform>%n threshold</numerusform>
            <numerusform>%n thresholds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n was (were) here already.</source>
        <translation>
            <numerusform>%n was here already.</numerusform>
            <numerusform>%n were here already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n has (have) the id of something else of yours, and was (were) taken beside it.</source>
        <translation>
            <numerusform>%n has the id of something else of yours, and was taken beside it.</numerusform>
            <numerusform>%n have the ids of other things of yours, and were taken beside them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n threshold(s) in the file is (are) another than yours; yours stay(s).</source>
        <translation>
            <numerusform>%n threshold in the file is another than yours; yours stays.</numerusform>
            <numerusform>%n thresholds in the file are others than yours; yours stay.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n threshold(s) is (are) for rules where none can be set, and was (were) left out.</source>
        <translation>
            <numerusform>%n threshold is for a rule where none can be set, and was left out.</numerusform>
            <numerusform>%n thresholds are for rules where none can be set, and were left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RuleRows</name>
    <message numerus="yes">
        <source>%n rule(s)</source>
        <translation>
            <numerusform>%n rule</numerusform>
            <numerusform>%n rules</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::ConditionPage</name>
    <message numerus="yes">
        <source>%n rule(s)</source>
        <translation>
            <numerusform>%n rule</numerusform>
            <numerusform>%n rules</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rule(s): %1</source>
        <translation>
            <numerusform>%n rule: %1</numerusform>
            <numerusform>%n rules: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n condition(s)</source>
        <translation>
            <numerusform>%n condition</numerusform>
            <numerusform>%n conditions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n source(s)</source>
        <translation>
            <numerusform>%n source</numerusform>
            <numerusform>%n sources</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::RulePage</name>
    <message numerus="yes">
        <source>%1 of %n movement(s), as written</source>
        <translation>
            <numerusform>%1 of %n movement, as written</numerusform>
            <numerusform>%1 of %n movements, as written</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>matwright::RuleForm</name>
    <message numerus="yes">
        <source>%n movement(s) of the catalogue ask for this as written</source>
        <translation>
            <numerusform>%n movement of the catalogue asks for this as written</numerusform>
            <numerusform>%n movements of the catalogue ask for this as written</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SwapText</name>
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
<context>
    <name>matwright::WishesForm</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n person</numerusform>
            <numerusform>%n people</numerusform>
        </translation>
    </message>
</context>
</TS>
