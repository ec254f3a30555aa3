using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Rodwright.Store.Postgres.Migrations;

internal sealed partial class RegulationTables : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "regulation_tables",
            columns: table => new
            {
                id = table.Column<string>(type: "text", nullable: false),
                title = table.Column<string>(type: "text", nullable: false),
                version = table.Column<int>(type: "integer", nullable: false),
                changed_by = table.Column<string>(type: "text", nullable: false),
                changed_utc = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                text = table.Column<string>(type: "text", nullable: false)
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
