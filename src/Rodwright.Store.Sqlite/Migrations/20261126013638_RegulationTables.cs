using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Rodwright.Store.Sqlite.Migrations;

internal sealed partial class RegulationTables : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "regulation_tables",
            columns: table => new
            {
                id = table.Column<string>(type: "TEXT", nullable: false),
                title = table.Column<string>(type: "TEXT", nullable: false),
                version = table.Column<int>(type: "INTEGER", nullable: false),
                changed_by = table.Column<string>(type: "TEXT", nullable: false),
                changed_utc = table.Column<DateTime>(type: "TEXT", nullable: false),
                text = table.Column<string>(type: "TEXT", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("regulation_tables_key", x => x.id);
            });
    }

    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "regulation_tables");
    }
}
